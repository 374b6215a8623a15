import type { Step } from '../../../results.js';
import { newton, step } from '../../steps.js';
import { problem, unsound, type Problem } from '../../verdict.js';

/** What the head or nut of a bolt pulls on. Lengths mm, strengths MPa. */
export type BoltEnd = WasherEnd | PlateEnd;

export interface WasherEnd {
    readonly kind: 'washer';
    /** Diameter, or side of a square washer. */
    readonly outer: number;
    readonly square?: boolean;
    /** The wider of the holes in washer and timber. */
    readonly hole: number;
    /** Compressive strength of the timber across the grain. */
    readonly fc90_k: number;
}

/** An outer steel plate, which serves as a washer. */
export interface PlateEnd {
    readonly kind: 'plate';
    readonly thickness: number;
    readonly hole: number;
    readonly fc90_k: number;
}

export interface AxialInput {
    readonly d: number;
    readonly As: number;
    readonly fu_k: number;
    readonly ends: readonly [BoltEnd, BoltEnd];
}

export interface AxialCapacity {
    /** Of the bolt's steel, N: characteristic, without the 0.9 of EN 1993-1-8. */
    readonly bolt: number;
    /** Under each end, N, characteristic. */
    readonly bearing: readonly [number, number];
    /** The least, N. */
    readonly Fax_Rk: number;
    readonly explain: () => readonly Step[];
}

/** Axial capacity of a bolt between its washers or plates. EN 1995-1-1 8.5.2. */
export function axialCapacity(input: AxialInput): AxialCapacity | Problem {
    const wrong = unsound('positive', { 'the bolt diameter': input.d, 'the stress area': input.As, 'the bolt strength': input.fu_k })
        ?? badEnd(input.ends[0], input.d) ?? badEnd(input.ends[1], input.d);
    if (wrong) {
        return wrong;
    }
    const bolt = input.fu_k * input.As;
    const bearing = [bearingUnder(input.ends[0], input.d), bearingUnder(input.ends[1], input.d)] as const;
    return { bolt, bearing, Fax_Rk: Math.min(bolt, ...bearing), explain: () => axialSteps(input) };
}

/** Contact area under a washer, mm². */
export function washerArea({ outer, hole, square }: Omit<WasherEnd, 'kind' | 'fc90_k'>): number {
    return (square ? outer ** 2 : Math.PI / 4 * outer ** 2) - Math.PI / 4 * hole ** 2;
}

/** A plate bears as a round washer of 12 t, at most 4 d: EN 1995-1-1 8.5.2(3). */
function asWasher(end: BoltEnd, d: number): WasherEnd {
    return end.kind === 'washer' ? end : { ...end, kind: 'washer', outer: Math.min(12 * end.thickness, 4 * d) };
}

function bearingUnder(end: BoltEnd, d: number): number {
    return 3 * end.fc90_k * washerArea(asWasher(end, d));
}

function badEnd(end: BoltEnd, d: number): Problem | undefined {
    return unsound('positive', {
        [end.kind === 'washer' ? 'the washer size' : 'the plate thickness']: end.kind === 'washer' ? end.outer : end.thickness,
        'the washer hole': end.hole, 'the strength across the grain': end.fc90_k
    }) ?? (asWasher(end, d).outer <= end.hole
        ? problem(`the washer bears on ${asWasher(end, d).outer} mm around a hole of ${end.hole} mm: nothing is left to bear`)
        : undefined);
}

function axialSteps({ d, As, fu_k, ends }: AxialInput): readonly Step[] {
    const weaker = bearingUnder(ends[0], d) <= bearingUnder(ends[1], d) ? ends[0] : ends[1];
    const { outer, square } = asWasher(weaker, d);
    const area = washerArea(asWasher(weaker, d));
    const [bolt, bearing] = [fu_k * As, bearingUnder(weaker, d)];
    const plate = weaker.kind === 'plate';
    return [
        step('F_{t,k}', 'f_{u,k}\\,A_s', [['f_{u,k}', fu_k, 'MPa'], ['A_s', As, 'mm2', 'stress area']], newton(bolt),
            { clause: 'EN 1995-1-1 8.5.2(1)' }),
        step('A_w', square ? 'd_w^2 - \\frac{\\pi}{4}\\,d_0^2' : '\\frac{\\pi}{4}\\left(d_w^2 - d_0^2\\right)', [
            ['d_w', outer, 'mm', plate ? 'the lesser of 12 plate thicknesses and 4 d' : 'washer'],
            ['d_0', weaker.hole, 'mm', 'hole']
        ], { value: area, unit: 'mm2' }, { clause: plate ? 'EN 1995-1-1 8.5.2(3)' : 'EN 1995-1-1 8.5.2(2)' }),
        step('F_{w,k}', '3.0\\,f_{c,90,k}\\,A_w', [['f_{c,90,k}', weaker.fc90_k, 'MPa'], ['A_w', area, 'mm2']],
            newton(bearing), { clause: 'EN 1995-1-1 8.5.2(2)' }),
        step('F_{ax,Rk}', '\\min\\left(F_{t,k},\\;F_{w,k}\\right)', [['F_{t,k}', bolt, 'N'], ['F_{w,k}', bearing, 'N']],
            newton(Math.min(bolt, bearing)), { clause: 'EN 1995-1-1 8.5.2(1)' })
    ];
}
