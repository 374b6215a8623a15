/** Buckling of a compressed member, EN 1995-1-1 6.3.2. Lengths mm, stresses MPa. */

export interface Buckling {
    readonly length: number;
    /** Radius of gyration. */
    readonly radius: number;
    readonly lambda: number;
    readonly lambdaRel: number;
    /** (6.27) or (6.28). */
    readonly k: number;
    readonly kc: number;
}

/** λ = l / i of a rectangle that buckles in the direction of its side `size`. */
export function slenderness(length: number, size: number): number {
    return length * Math.sqrt(12) / size;
}

/** (6.21), (6.22). */
export function relativeSlenderness(lambda: number, fc0_k: number, E0_05: number): number {
    return lambda / Math.PI * Math.sqrt(fc0_k / E0_05);
}

/** (6.27), (6.28). */
export function bucklingAuxiliary(lambdaRel: number, betaC: number): number {
    return 0.5 * (1 + betaC * (lambdaRel - 0.3) + lambdaRel ** 2);
}

/** k_c by (6.25), (6.26); 1 up to λ_rel = 0.3 by 6.3.2(2). */
export function bucklingFactor(lambdaRel: number, betaC: number): number {
    if (lambdaRel <= 0.3) {
        return 1;
    }
    const k = bucklingAuxiliary(lambdaRel, betaC);
    return 1 / (k + Math.sqrt(k * k - lambdaRel ** 2));
}

export function bucklingOf(length: number, size: number, strength: { readonly fc0_k: number; readonly E0_05: number }, betaC: number): Buckling {
    const lambda = slenderness(length, size);
    const lambdaRel = relativeSlenderness(lambda, strength.fc0_k, strength.E0_05);
    return { length, radius: size / Math.sqrt(12), lambda, lambdaRel, k: bucklingAuxiliary(lambdaRel, betaC), kc: bucklingFactor(lambdaRel, betaC) };
}
