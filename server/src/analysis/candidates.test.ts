import fc from 'fast-check';
import { expect, test } from 'vitest';
import { addCandidate, appendCandidate, noCandidates, type Candidates } from './candidates.js';

const force = fc.oneof(fc.constant(0), fc.integer({ min: -20, max: 20 }));
const states = fc.array(fc.record({ N: force, V: force, M: force, shortness: fc.integer({ min: 0, max: 5 }) }), { minLength: 1, maxLength: 60 });
type State = { readonly N: number; readonly V: number; readonly M: number; readonly shortness: number };

const kmod = [0.6, 0.7, 0.8, 0.9, 1.1, 1.1];

/** As checks have them: each grows with the forces on one side, and falls with kmod. */
const uses: readonly ((state: State) => number)[] = [
    ({ M, shortness }) => Math.abs(M) / kmod[shortness]!,
    ({ M, shortness }) => Math.max(0, -M) / kmod[shortness]!,
    ({ V, shortness }) => Math.abs(V) / kmod[shortness]!,
    ({ V, shortness }) => Math.max(0, V) / kmod[shortness]!,
    ({ N, M, shortness }) => (Math.max(0, N) + Math.abs(M)) / kmod[shortness]!,
    ({ N, M, shortness }) => (Math.max(0, -N) / 9 / kmod[shortness]!) ** 2 + Math.abs(M) / kmod[shortness]!,
    ({ V, M }) => Math.abs(M) / (1 - Math.min(0.9, Math.abs(V) / 30) ** 2)
];

const listed = ({ count, N, V, M, shortness, tags }: Candidates) =>
    Array.from({ length: count }, (_, i) => ({ N: N[i]!, V: V[i]!, M: M[i]!, shortness: shortness[i]!, tag: tags[i]! }));

test.each([
    ['all', uses], ['N and M', uses.slice(0, 2).concat(uses.slice(4, 6))], ['V', uses.slice(2, 4)]
] as const)('the worst of every check is among what is kept: %s', (together, asked) => {
    fc.assert(fc.property(states, (all) => {
        const found = noCandidates(together);
        all.forEach(({ N, V, M, shortness }, tag) => addCandidate(found, N, V, M, shortness, tag));
        const kept = listed(found);
        for (const { tag, ...state } of kept) expect(all[tag]).toEqual(state);
        for (const use of asked) expect(Math.max(...kept.map(use))).toBeCloseTo(Math.max(...all.map(use)), 12);
        expect(kept.length).toBeLessThanOrEqual(all.length);
    }), { numRuns: 500 });
});

test('of like states one is kept', () => {
    const found = noCandidates('all');
    for (let i = 0; i < 3; i++) addCandidate(found, 1, -2, 3, 2, i);
    expect(listed(found).map(({ tag }) => tag)).toEqual([0]);
});

test('what is appended stays, past any room', () => {
    const found = noCandidates('all');
    for (let i = 0; i < 100; i++) appendCandidate(found, 0, i, 0, 0, i);
    expect(listed(found).map(({ V }) => V)).toEqual(Array.from({ length: 100 }, (_, i) => i));
});
