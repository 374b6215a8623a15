import type { LateHazardRule } from './hazard-rule.js';

/** A member that sinks more than the softest of its class, or does not come back, is not what the calculation takes it to be. Common practice, no source. */
export const proofLoadInDoubt: LateHazardRule = {
    code: 'proof-load-in-doubt',
    needs: 'loadTests',
    find: ({ loadTests = [] }) => loadTests.filter(({ outcome }) => outcome === 'in doubt').map(({ name, member, verdict, source }) => ({
        severity: 'stop' as const,
        subject: member,
        message: `The proof load ${name} speaks against ${member}: ${verdict}`,
        action: 'Do not build it in or go on loading it; look for a crack, a loose bolt or a block that gave, and test again; else take another piece.',
        decider: 'structural engineer',
        source
    }))
};
