const quoted = 'as quoted in "Steel Buildings in Europe", multi-storey part 5';
const seen = `EN 1993-1-1 6.1(1) recommended, ${quoted}`;
const lateral = 'EN 1993-1-1 6.3.2.3(1) recommended, from memory';

/** Partial factors and national choices of EN 1993, with the least and the greatest that a file may set. */
export const steelFactors = {
    gammaM0: { name: 'gamma_M0', value: 1.0, least: 0.5, most: 2, origin: seen },
    gammaM1: { name: 'gamma_M1', value: 1.0, least: 0.5, most: 2, origin: seen },
    gammaM2: { name: 'gamma_M2', value: 1.25, least: 0.5, most: 3, origin: `EN 1993-1-8 2.2(2) recommended, ${quoted}` },
    lambdaLT0: { name: 'lambda_LT0', value: 0.4, least: 0, most: 1, origin: lateral },
    betaLT: { name: 'beta_LT', value: 0.75, least: 0.75, most: 1, origin: lateral },
    general: { name: 'LT general', value: 0, least: 0, most: 1, origin: '1: rolled sections by EN 1993-1-1 6.3.2.2 too, instead of 6.3.2.3' },
    shapeFactor: { name: 'LT shape factor', value: 0, least: 0, most: 1, origin: '1: χ_LT divided by f of EN 1993-1-1 6.3.2.3(2), which favours uneven moments; 0 is on the safe side' },
    eta: { name: 'eta shear', value: 1.0, least: 1, most: 1.2, origin: 'EN 1993-1-1 6.2.6(3) note, the lower value' }
} as const;
