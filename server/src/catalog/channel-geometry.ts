/** A rolled channel with tapered flanges: area and moments by summing thin vertical slices of the flange. */

/** Slope of the inner face of an UPN's flange (h <= 300 mm), EN 10365, from memory. */
const taper = 0.08;
const slices = 2000;

interface ChannelMeasures {
    readonly h: number;
    readonly b: number;
    readonly tw: number;
    readonly tf: number;
    readonly r: number;
}

type ChannelComputed = Readonly<Record<'A' | 'Iy' | 'Iz' | 'Wely' | 'Wply' | 'Avz', number>>;

/** A, Iy, Iz, Wel, Wpl and the shear area of EN 1993-1-1 6.2.6(3)b; mm. */
export function channelProperties({ h, b, tw, tf, r }: ChannelMeasures): ChannelComputed {
    const thickness = flangeThickness({ b, tw, tf, r });
    const dx = (b - tw) / slices;
    let A = h * tw;
    let first = h * tw ** 2 / 2;
    let second = h * tw ** 3 / 3;
    let Iy = tw * h ** 3 / 12;
    let Wply = tw * h ** 2 / 4;
    for (let i = 0; i < slices; i++) {
        const x = tw + (i + 0.5) * dx;
        const t = Math.min(thickness(x), h / 2);
        const inner = h / 2 - t;
        A += 2 * t * dx;
        first += 2 * t * x * dx;
        second += 2 * t * x ** 2 * dx;
        Iy += 2 / 3 * ((h / 2) ** 3 - inner ** 3) * dx;
        Wply += ((h / 2) ** 2 - inner ** 2) * dx;
    }
    return { A, Iy, Iz: second - first ** 2 / A, Wely: 2 * Iy / h, Wply, Avz: Math.max(A - 2 * b * tf + (tw + r) * tf, (h - 2 * tf) * tw) };
}

/** Thickness of the flange at x from the back of the web: root fillet, tapered face, toe fillet of half its radius. */
function flangeThickness({ b, tw, tf, r }: Omit<ChannelMeasures, 'h'>): (x: number) => number {
    const length = Math.hypot(1, taper);
    const face = (x: number) => tf + taper * (b / 2 - x);
    const toe = r / 2;
    const root = { x: tw + r, t: face(tw + r) + r * length };
    const end = { x: b - toe, t: face(b - toe) - toe * length };
    return x => {
        if (x < root.x - r * taper / length) {
            return root.t - Math.sqrt(Math.max(r ** 2 - (x - root.x) ** 2, 0));
        }
        if (x > end.x + toe * taper / length) {
            return end.t + Math.sqrt(Math.max(toe ** 2 - (x - end.x) ** 2, 0));
        }
        return face(x);
    };
}
