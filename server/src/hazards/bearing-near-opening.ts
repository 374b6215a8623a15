import type { Model, Support } from '../../../language/src/model.js';
import type { HazardRule } from './hazard-rule.js';
import { joined, millimetres } from './telling.js';

/** mm, where the wall's thickness is not given. Common practice, no source. */
const usual = 200;

/** Nearer to an opening than a wall is thick, the corner may shear off under the bearing. Common practice, no source. */
export const bearingNearOpening: HazardRule = {
    code: 'bearing-near-opening',
    find: ({ model }) => model.members.flatMap(member => {
        const near = member.supports.filter(support => support.kind === 'wall' && support.fromWallEnd && support.fromWallEnd.value < thicknessUnder(support, model));
        return near.length === 0 ? [] : [{
            severity: 'warn' as const,
            subject: member.name,
            message: `${member.name} bears near the end of a wall or an opening: ${joined(near.map(({ on, fromWallEnd }) => `${millimetres(fromWallEnd!.value)} from it on ${on}`))}`,
            action: 'Look for cracks at the reveal and for the arch or lintel over the opening; spread the load away from it by a padstone.',
            decider: 'structural engineer',
            source: near[0]!.fromWallEnd!.source
        }];
    })
};

function thicknessUnder({ on }: Support, { walls }: Model): number {
    return walls.find(({ name }) => name === on)?.thickness?.value ?? usual;
}
