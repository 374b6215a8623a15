export type Psi = readonly [psi0: number, psi1: number, psi2: number];

const seen = 'EN 1990 Table A1.1 recommended, seen in an open textbook (TU Delft)';

/** Combination factors ψ0, ψ1, ψ2 by action. */
export const psiTable: Readonly<Record<string, { readonly psi: Psi; readonly origin: string }>> = {
    'imposed A': { psi: [0.7, 0.5, 0.3], origin: seen },
    'imposed B': { psi: [0.7, 0.5, 0.3], origin: seen },
    'imposed C': { psi: [0.7, 0.7, 0.6], origin: seen },
    'imposed D': { psi: [0.7, 0.7, 0.6], origin: seen },
    'imposed E': { psi: [1.0, 0.9, 0.8], origin: seen },
    'imposed F': { psi: [0.7, 0.7, 0.6], origin: seen },
    'imposed G': { psi: [0.7, 0.5, 0.3], origin: seen },
    'imposed H': { psi: [0, 0, 0], origin: seen },
    snow: { psi: [0.5, 0.2, 0], origin: 'EN 1990 Table A1.1, sites up to 1000 m outside the Nordic countries, from memory' },
    wind: { psi: [0.6, 0.2, 0], origin: seen },
    // EN 1991-1-6 gives no ψ1: the frequent combination has no part in execution, and ψ2 stands in.
    construction: { psi: [1.0, 0.2, 0.2], origin: 'EN 1991-1-6 A1.1 recommended, from memory' }
};
