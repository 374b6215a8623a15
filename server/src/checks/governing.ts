/** The one loop over stations and states: a number for each, and the worst is kept. */
import type { ActionState, MemberActions, Segment, Station } from '../analysis/actions.js';
import { whereAt, type Where } from './judged.js';
import { isWorse } from './worse.js';

export interface Place {
    readonly station: Station;
    readonly segment: Segment;
    readonly state: ActionState;
    readonly utilisation: number;
}

/** Where and when, as an outcome says it. */
export function whereOf({ station, state }: Place): Where {
    return whereAt(station, state);
}

/** Nothing passes on a section that is not there. */
const noSection: Segment = { from: NaN, to: NaN, b: NaN, h: NaN, shiftUp: NaN, shiftRight: NaN, weakened: false };

/**
 * The worst place of a member; undefined where there is none.
 * @param utilisationAt gives undefined for a state that the check does not concern
 */
export function worstPlace(
    actions: MemberActions, utilisationAt: (state: ActionState, segment: Segment, station: Station) => number | undefined
): Place | undefined {
    let worst: { station: Station; segment: Segment; state: ActionState } | undefined;
    let most: number | undefined;
    for (const station of actions.stations) {
        const found = actions.segments[station.segment];
        const segment = found && found.b > 0 && found.h > 0 ? found : noSection;
        for (const state of station.states) {
            const utilisation = utilisationAt(state, segment, station);
            if (utilisation !== undefined && isWorse(utilisation, most)) {
                most = utilisation;
                worst = { station, segment, state };
            }
        }
    }
    return worst && most !== undefined ? { ...worst, utilisation: most } : undefined;
}

/** The worst of some candidates; undefined where there is none. */
export function worstOf<T extends { readonly utilisation: number }>(candidates: readonly T[]): T | undefined {
    return candidates.reduce<T | undefined>((most, next) => isWorse(next.utilisation, most?.utilisation) ? next : most, undefined);
}
