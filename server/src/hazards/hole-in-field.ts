import type { Hole, Member } from '../../../language/src/model.js';
import type { HazardRule } from './hazard-rule.js';
import { inMiddleHalf } from './high-moment.js';
import { joined, metres } from './telling.js';

/**
 * EN 1995-1-1 has no rule for holes but the net section. That a hole at midspan is to stay in the middle third of the
 * depth, and below a quarter of it, is common practice, no source.
 */
export const holeInField: HazardRule = {
    code: 'hole-in-field',
    find: ({ model, actions }) => model.members.flatMap(member => {
        const holes = member.holes.filter(hole => inMiddleHalf(member, actions, hole.at) && !isSmallAndCentral(hole, member));
        return holes.length === 0 ? [] : [{
            severity: 'warn' as const,
            subject: member.name,
            message: `${member.name} has a hole at ${joined(holes.map(({ at }) => metres(at.value)))}, where its bending moment is high, that is large or far from the axis`,
            action: 'Move it towards a support and to the middle of the depth, or have it judged: the net section says nothing of splitting at the hole.',
            decider: 'structural engineer',
            source: holes[0]!.source
        }];
    })
};

function isSmallAndCentral({ diameter, height }: Hole, { section }: Member): boolean {
    const depth = section.shape === 'rolled' ? Infinity : section.depth.value;
    return diameter.value <= depth / 4 && Math.abs(height.value) + diameter.value / 2 <= depth / 6;
}
