import type { HazardRule } from './hazard-rule.js';

/** The analysis lets every support hold down; one that cannot would let the member lift (EN 1990 6.4.2, EQU, table A1.2(A)). */
export const upliftNotTied: HazardRule = {
    code: 'uplift-not-tied',
    find: ({ actions }) => actions.members.flatMap(member => member.supports
        .filter(support => support.equilibriumMin < -1 && !support.tied && (support.kind === 'wall' || support.kind === 'member'))
        .map(support => ({
            severity: 'stop' as const,
            subject: member.member,
            message: `${member.member} lifts off ${support.support} by ${(-support.equilibriumMin / 1000).toFixed(1)} kN and nothing holds it down there`,
            action: 'Tie it down for that force and write tied, or move the support.',
            decider: 'structural engineer',
            source: support.source
        })))
};
