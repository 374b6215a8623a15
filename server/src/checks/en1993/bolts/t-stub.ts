/** EN 1993-1-8 6.2.4, Table 6.2: the T-stub of one row of two bolts. N, mm, MPa. */

export interface TStub {
    /** Thickness and yield stress of the bent plate. */
    readonly t: number;
    readonly fy: number;
    readonly m: number;
    /** Free edge distance; n is the lesser of it and 1.25 m. */
    readonly e: number;
    readonly leff1: number;
    readonly leff2: number;
    /** F_t,Rd of one bolt. */
    readonly boltTension: number;
    readonly boltArea: number;
    /** L_b, over which a bolt stretches. */
    readonly boltLength: number;
}

export type FailureMode = '1' | '1-2' | '2' | '3';

export interface TStubResistance {
    readonly modes: readonly { readonly mode: FailureMode; readonly resistance: number }[];
    readonly governing: FailureMode;
    readonly resistance: number;
    /** Prying forces may develop: L_b <= L_b* = 8.8 m³ A_s / (l_eff,1 t³), one row. */
    readonly prying: boolean;
    readonly limitLength: number;
    /** Thickness above which they do not. */
    readonly thicknessWithoutPrying: number;
}

/** All lengths and forces above 0. */
export function tStub(stub: TStub, gammaM0: number): TStubResistance {
    const { t, fy, m, e, leff1, leff2, boltTension, boltArea, boltLength } = stub;
    const n = Math.min(e, 1.25 * m);
    const Mpl1 = 0.25 * leff1 * t ** 2 * fy / gammaM0;
    const Mpl2 = 0.25 * leff2 * t ** 2 * fy / gammaM0;
    const bolts = 2 * boltTension;
    const cube = 8.8 * m ** 3 * boltArea / leff1;
    const prying = boltLength <= cube / t ** 3;
    const modes: TStubResistance['modes'] = prying
        ? [{ mode: '1', resistance: 4 * Mpl1 / m }, { mode: '2', resistance: (2 * Mpl2 + n * bolts) / (m + n) }, { mode: '3', resistance: bolts }]
        : [{ mode: '1-2', resistance: 2 * Mpl1 / m }, { mode: '3', resistance: bolts }];
    const least = modes.reduce((low, one) => one.resistance < low.resistance ? one : low);
    return {
        modes, governing: least.mode, resistance: least.resistance, prying,
        limitLength: cube / t ** 3, thicknessWithoutPrying: Math.cbrt(cube / boltLength)
    };
}
