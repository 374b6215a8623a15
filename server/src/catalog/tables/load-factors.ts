const strength = 'EN 1990 Table A1.2(B) recommended, from memory';
const equilibrium = 'EN 1990 Table A1.2(A) recommended, from memory';

/** Partial factors of actions, sets B (STR) and A (EQU), and ξ of equation 6.10b. */
export const loadFactors = {
    gammaG: { name: 'gamma_G', value: 1.35, origin: strength },
    gammaGfavourable: { name: 'gamma_G favourable', value: 1.0, origin: strength },
    gammaQ: { name: 'gamma_Q', value: 1.5, origin: strength },
    xi: { name: 'xi', value: 0.85, origin: strength },
    gammaGequilibrium: { name: 'gamma_G equilibrium', value: 1.1, origin: equilibrium },
    gammaGequilibriumFavourable: { name: 'gamma_G equilibrium favourable', value: 0.9, origin: equilibrium }
} as const;
