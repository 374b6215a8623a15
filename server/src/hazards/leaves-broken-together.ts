import type { HazardRule } from './hazard-rule.js';
import { metres } from './telling.js';

/** Bolts need room on either side of a butt, a depth or so, to hand a moment on. Common practice, no source. */
export const leavesBrokenTogether: HazardRule = {
    code: 'leaves-broken-together',
    find: ({ model }) => model.members.flatMap(({ name, section }) => {
        if (section.shape !== 'plies') {
            return [];
        }
        const { count, butts, depth } = section;
        const place = butts.find(({ at }) => {
            const within = butts.filter(other => other.at.value >= at.value && other.at.value <= at.value + depth.value);
            return new Set(within.map(({ leaf }) => leaf)).size === count;
        });
        return place === undefined ? [] : [{
            severity: 'stop' as const,
            subject: name,
            message: `Every leaf of ${name} is broken within its own depth at ${metres(place.at.value)}: no leaf carries the moment across`,
            action: 'Stagger the butts so that at each of them another leaf runs through with its bolts.',
            decider: 'structural engineer',
            source: place.source
        }];
    })
};
