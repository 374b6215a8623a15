import type { HazardRule } from './hazard-rule.js';
import { joined } from './telling.js';

/** Bolts have 1 or 2 mm of play in their holes (EN 1090-2 Table 11, from memory): a covered splice sags by it before it bites. */
export const splicePlay: HazardRule = {
    code: 'splice-play',
    find: ({ model }) => {
        const loose = model.members.filter(({ splices }) => splices.some(({ plates }) => plates.some(({ where }) => where !== 'end')));
        return loose.length === 0 ? [] : [{
            severity: 'note',
            subject: joined(loose.map(({ name }) => name)),
            message: `The bolts of a splice with cover plates have play in their holes, which no deflection here contains: ${joined(loose.map(({ name }) => name))}`,
            action: 'Assemble it with a precamber and load it before finishes go on; ream the holes for fitted bolts, or preload them, where the sag matters.',
            decider: 'structural engineer',
            source: loose[0]!.splices[0]!.source
        }];
    }
};
