import type { HazardRule } from './hazard-rule.js';
import { joined } from './telling.js';

/** A proof load is there to find what breaks, so it is laid on as if it will. Common practice, no source. */
export const proofLoad: HazardRule = {
    code: 'proof-load',
    find: ({ model: { loadTests } }) => loadTests.length === 0 ? [] : [{
        severity: 'warn',
        subject: joined(loadTests.map(({ name }) => name)),
        message: `${joined(loadTests.map(({ member, weights }) => `${member} is loaded with up to ${Math.ceil(Math.max(0, ...weights.map(({ mass }) => mass.value)))} kg`))} to see whether it holds: it may break without warning`,
        action: 'Nobody on it or under it; catch props just clear of it at both sides of the weights; load in equal steps, wait and read at each, from a distance; stop at a crack, or where it goes on sinking.',
        decider: 'structural engineer',
        source: loadTests[0]!.source
    }]
};
