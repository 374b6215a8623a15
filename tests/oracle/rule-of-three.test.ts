/**
 * The trade's rule that three bolted leaves are worth about two of one (common practice, no source): where it holds and
 * where it does not. 3 of 63 × 200 mm C24 over 4.70 m, M12 in zigzag ± 50 mm, an even load; the analysis itself is held to an
 * independent model in built-up.test.ts.
 */
import { expect, test } from 'vitest';
import { elastic, recommended, single } from './fixture.js';

const span = 4700;
const load = 4;
/** M12 in C24, EN 1995-1-1 Table 7.1. */
const slip = 420 ** 1.5 * 12 / 23;

const bolts = (pitch: number): [number, number][] => {
    const count = Math.ceil((span - 200) / pitch);
    return Array.from({ length: count + 1 }, (_, i): [number, number] => [100 + ((span - 200) * i) / count, [50, 0, -50, 0][i % 4]!]);
};

/** In leaves: by deflection (K_ser), and by the greatest moment that one leaf has to take (K_u). */
function worth(butts: readonly (readonly [number, number])[], pitch: number): { readonly stiffness: number; readonly strength: number } {
    const one = single(
        { length: span, b: 63, h: 200, supports: [{ at: 0 }, { at: span }], plies: { count: 3, butts, bolts: bolts(pitch) } },
        [{ q: load, action: { kind: 'imposed', category: 'A' } }],
        elastic(11000, { kdef: 0, slip: () => slip }), { ...recommended, gammaQ: 1 }
    );
    const most = Math.max(...one.leaves!.map(({ moment }) => Math.max(moment.max, -moment.min)));
    return { stiffness: one.stiffnessRatio!, strength: load * span ** 2 / 8 / most };
}

const oneBroken = [[2, span / 2]] as const;
const quarters = [[1, span / 4], [2, span / 2], [3, 3 * span / 4]] as const;
const outerTwo = [[1, 1900], [3, 1900], [2, 3000]] as const;
const nearEnds = [[1, 500], [3, 500], [2, 4200]] as const;
const twice = [[1, 1500], [1, 3000], [2, 2200], [2, 3700], [3, 800], [3, 2300]] as const;

test.each([
    { what: 'one leaf broken, in the middle', butts: oneBroken, pitch: 350, stiffness: 2.23, strength: 2.00, holds: true },
    { what: 'each leaf broken at its own quarter, bolts close', butts: quarters, pitch: 100, stiffness: 2.11, strength: 1.97, holds: true },
    { what: 'each leaf broken at its own quarter, ordinary bolts', butts: quarters, pitch: 350, stiffness: 1.72, strength: 1.78, holds: false },
    { what: 'all butts near the supports: stiff, but the broken leaves lean on the whole one', butts: nearEnds, pitch: 350, stiffness: 2.46, strength: 1.75, holds: false },
    { what: 'the outer two broken at one place, the middle one at another', butts: outerTwo, pitch: 350, stiffness: 1.28, strength: 1.00, holds: false },
    { what: 'the same with three times the bolts', butts: outerTwo, pitch: 100, stiffness: 1.55, strength: 1.02, holds: false },
    { what: 'each leaf of three pieces', butts: twice, pitch: 350, stiffness: 0.36, strength: 1.00, holds: false }
])('$what: worth about two is $holds', ({ butts, pitch, stiffness, strength, holds }) => {
    const found = worth(butts, pitch);
    expect(found.stiffness).toBeCloseTo(stiffness, 1);
    expect(found.strength).toBeCloseTo(strength, 1);
    expect(Math.min(found.stiffness, found.strength) >= 1.95).toBe(holds);
});

test('where two leaves are broken at one place the third takes all, whatever the bolts', () => {
    for (const pitch of [350, 100, 50]) expect(worth(outerTwo, pitch).strength).toBeLessThan(1.05);
});
