/** The one loop over stations and states: a number for each, and the worst is kept. */
import type { ActionState, MemberActions, Segment, Station } from '../analysis/actions.js';

export interface Place {
    readonly station: Station;
    readonly segment: Segment;
    readonly state: ActionState;
    readonly utilisation: number;
}

/** Whether a utilisation is worse than another. One that is not a number is the worst there is. */
export function isWorse(utilisation: number, than: number): boolean {
    return !Number.isNaN(than) && !(utilisation <= than);
}

/** Nothing passes on a section that is not known. */
const unknownSegment: Segment = { from: NaN, to: NaN, b: NaN, h: NaN, shiftUp: NaN, shiftRight: NaN, weakened: false };

/** The worst place of a member; undefined where it has no station in use. */
export function worstPlace(
    actions: MemberActions, utilisationAt: (state: ActionState, segment: Segment, station: Station) => number
): Place | undefined {
    let worst: { station: Station; segment: Segment; state: ActionState } | undefined;
    let most = -Infinity;
    for (const station of actions.stations) {
        const segment = actions.segments[station.segment] ?? unknownSegment;
        for (const state of station.states) {
            const utilisation = utilisationAt(state, segment, station);
            if (isWorse(utilisation, most)) {
                most = utilisation;
                worst = { station, segment, state };
            }
        }
    }
    return worst && { ...worst, utilisation: most };
}

/** The worst of some candidates; undefined where there is none. */
export function worstOf<T extends { readonly utilisation: number }>(candidates: readonly T[]): T | undefined {
    return candidates.reduce<T | undefined>((most, next) => most === undefined || isWorse(next.utilisation, most.utilisation) ? next : most, undefined);
}
