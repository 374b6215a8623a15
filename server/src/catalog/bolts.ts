/** Metric bolts, threaded rods, nuts and washers, coarse thread. Lengths mm, areas mm², strengths MPa. */

export interface Thread {
    /** `M12`. */
    readonly name: string;
    readonly d: number;
    readonly pitch: number;
    /** Tensile stress area, mm². */
    readonly As: number;
    /** Width across flats of head and nut. */
    readonly acrossFlats: number;
    readonly headHeight: number;
    readonly nutHeight: number;
    readonly washers: readonly Washer[];
}

export interface Washer {
    readonly standard: 'ISO 7089' | 'ISO 7093' | 'ISO 7094';
    readonly inner: number;
    readonly outer: number;
    readonly thickness: number;
}

export interface BoltGrade {
    /** `8.8`. */
    readonly name: string;
    /** Yield and ultimate strength, MPa. */
    readonly fyb: number;
    readonly fub: number;
    /** For the thread in the shear plane, EN 1993-1-8 Table 3.4. */
    readonly alphaV: number;
    readonly origin: string;
}

/** Where each column of the thread table comes from. */
export const threadOrigins = {
    As: 'ISO 898-1, seen on fastener data pages; M6 from memory; all agree with π/4 (d − 0.9382 P)²',
    head: 'ISO 4014, seen on a fastener data page; M22 (34 mm across flats) from memory',
    nut: 'ISO 4032, greatest height, from memory',
    'ISO 7089': 'ISO 7089, seen on a fastener data page',
    'ISO 7093': 'ISO 7093-1, from memory',
    'ISO 7094': 'ISO 7094, from memory'
} as const;

type Size3 = readonly [inner: number, outer: number, thickness: number];

function thread(
    name: string, pitch: number, As: number, acrossFlats: number, headHeight: number, nutHeight: number,
    normal: Size3, large: Size3, extraLarge?: Size3
): readonly [string, Thread] {
    const washers = [washer('ISO 7089', normal), washer('ISO 7093', large)];
    return [name, {
        name, d: Number(name.slice(1)), pitch, As, acrossFlats, headHeight, nutHeight,
        washers: extraLarge ? [...washers, washer('ISO 7094', extraLarge)] : washers
    }];
}

function washer(standard: Washer['standard'], [inner, outer, thickness]: Size3): Washer {
    return { standard, inner, outer, thickness };
}

/** By name. Sources: `threadOrigins`. */
export const threads: ReadonlyMap<string, Thread> = new Map([
    //     name    P     As   s   head   nut  ISO 7089       ISO 7093       ISO 7094
    thread('M6',  1.00, 20.1, 10,  4.0,  5.2, [6.4, 12, 1.6], [6.4, 18, 1.6], [6.6, 22, 2]),
    thread('M8',  1.25, 36.6, 13,  5.3,  6.8, [8.4, 16, 1.6], [8.4, 24, 2], [9, 28, 3]),
    thread('M10', 1.50, 58.0, 16,  6.4,  8.4, [10.5, 20, 2], [10.5, 30, 2.5], [11, 34, 3]),
    thread('M12', 1.75, 84.3, 18,  7.5, 10.8, [13, 24, 2.5], [13, 37, 3], [13.5, 44, 4]),
    thread('M14', 2.00,  115, 21,  8.8, 12.8, [15, 28, 2.5], [15, 44, 3], [15.5, 50, 4]),
    thread('M16', 2.00,  157, 24, 10.0, 14.8, [17, 30, 3], [17, 50, 3], [17.5, 56, 5]),
    thread('M18', 2.50,  192, 27, 11.5, 15.8, [19, 34, 3], [19, 56, 4]),
    thread('M20', 2.50,  245, 30, 12.5, 18.0, [21, 37, 3], [21, 60, 4], [22, 72, 6]),
    thread('M22', 2.50,  303, 34, 14.0, 19.4, [23, 39, 3], [23, 66, 5]),
    thread('M24', 3.00,  353, 36, 15.0, 21.5, [25, 44, 4], [25, 72, 5], [26, 85, 6]),
    thread('M27', 3.00,  459, 41, 17.0, 23.8, [28, 50, 4], [28, 85, 6]),
    thread('M30', 3.50,  561, 46, 18.7, 25.6, [31, 56, 4], [33, 92, 6], [33, 105, 6])
]);

const seen = 'EN 1993-1-8 Tables 3.1 and 3.4, seen in a published text';
const remembered = 'EN 1993-1-8 Tables 3.1 and 3.4, from memory';

/** By name: EN 1993-1-8 Table 3.1, α_v by Table 3.4. */
export const boltGrades: ReadonlyMap<string, BoltGrade> = new Map(([
    ['4.6', 240, 400, 0.6, seen],
    ['4.8', 320, 400, 0.5, remembered],
    ['5.6', 300, 500, 0.6, remembered],
    ['5.8', 400, 500, 0.5, remembered],
    ['6.8', 480, 600, 0.5, remembered],
    ['8.8', 640, 800, 0.6, seen],
    ['10.9', 900, 1000, 0.5, seen]
] as const).map(([name, fyb, fub, alphaV, origin]) => [name, { name, fyb, fub, alphaV, origin }]));

/** Tensile stress area of a coarse thread, mm². ISO 898-1: π/4 (d − 0.9382 P)². */
export function stressArea(d: number, pitch: number): number {
    return Math.PI / 4 * (d - 0.9382 * pitch) ** 2;
}

/** Root diameter of an external thread, mm. ISO 724 and ISO 68-1: d − 1.22687 P, from memory. */
export function rootDiameter(thread: Thread): number {
    return thread.d - 1.22687 * thread.pitch;
}
