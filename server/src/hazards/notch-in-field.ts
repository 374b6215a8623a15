import type { HazardRule } from './hazard-rule.js';
import { inMiddleHalf } from './high-moment.js';

/** EN 1995-1-1 6.5.2 covers notches at supports alone. */
export const notchInField: HazardRule = {
    code: 'notch-in-field',
    find: ({ model, actions }) => model.members.flatMap(member => member.notches
        .filter(({ from, to }) => inMiddleHalf(member, actions, from, to))
        .map(notch => ({
            severity: 'warn' as const,
            subject: member.name,
            message: `${member.name} is notched where its bending moment is high`,
            action: 'Fill or strap the notch, or have it judged: the standard has no rule for a notch away from a support.',
            decider: 'structural engineer',
            source: notch.source
        })))
};
