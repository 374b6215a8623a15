import type { HazardRule } from './hazard-rule.js';

/** The residual section says nothing of the stresses across the grain at the edge of a sudden loss. Common practice, no source. */
export const lossEdgeSharp: HazardRule = {
    code: 'loss-edge-sharp',
    find: ({ model }) => model.members.flatMap(member => {
        const depth = member.section.shape === 'rectangle' ? member.section.depth.value : Infinity;
        return member.losses
            .filter(loss => Math.max(loss.faces.top?.value ?? 0, loss.faces.bottom?.value ?? 0) > depth / 6)
            .map(loss => ({
                severity: 'note' as const,
                subject: member.name,
                message: `The loss of ${member.name} takes more than a sixth of its depth; the splitting at its ends is not covered by the residual section`,
                action: 'Taper the cut-back at both ends (about 1 in 4) and look for splits along the grain.',
                decider: 'you',
                source: loss.source
            }));
    })
};
