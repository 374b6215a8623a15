import type { SupportKind } from '../../../language/src/model.js';
import type { HazardRule } from './hazard-rule.js';
import { joined, metres, millimetres } from './telling.js';

/** mm, whatever the stress: timber shrinks, walls move and old ends rot. Common practice, no source. */
const least: Readonly<Partial<Record<SupportKind, number>>> = { wall: 90, member: 40 };

/** Less than that and a little movement lets the end slip off. */
export const bearingShort: HazardRule = {
    code: 'bearing-short',
    find: ({ model }) => model.members.flatMap(member => {
        const short = member.supports.filter(({ kind, bearing }) => bearing && bearing.value < (least[kind] ?? 0));
        return short.length === 0 ? [] : [{
            severity: 'warn' as const,
            subject: member.name,
            message: `${member.name} bears on little: ${joined(short.map(({ on, at, bearing }) => `${millimetres(bearing!.value)} on ${on} at ${metres(at.value)}`))}; usual is ${least.wall} mm on masonry and ${least.member} mm on timber`,
            action: 'Open up to see the true bearing; lengthen it with a bracket, a corbel or a plate fixed to both, or strap the end.',
            decider: 'structural engineer',
            source: short[0]!.bearing!.source
        }];
    })
};
