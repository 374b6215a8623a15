import type { HazardRule } from './hazard-rule.js';
import { joined } from './telling.js';

/** Bare steel has lost half its strength at about 590 °C, and slender steel is there within a quarter of an hour: EN 1993-1-2 Table 3.1, from memory. */
export const steelBareInFire: HazardRule = {
    code: 'steel-bare-in-fire',
    find: ({ model }) => {
        const steel = [...model.hangers, ...model.members.filter(({ section }) => section.shape === 'rolled' || section.shape === 'flitch')];
        return steel.length === 0 ? [] : [{
            severity: 'note',
            subject: joined(steel.map(({ name }) => name)),
            message: 'Bare steel gives way in a fire long before old timber of this size; fire was not checked',
            action: 'Ask what resistance is wanted; case rods, plates and beams in timber or board, or hold the load otherwise.',
            decider: 'fire officer, with the structural engineer',
            source: model.hangers[0]?.usedAt ?? steel[0]!.source
        }];
    }
};
