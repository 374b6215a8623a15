/** Which action a load belongs to, and how long it lasts. */
import { durations, type Action, type Duration, type ImposedCategory, type Load } from '../../../language/src/model.js';
import type { UnitCase } from './actions.js';

/** `G`, `imposed A`, `snow`, `wind`, `construction`: loads of one action vary together. */
export function actionName(action: Action): string {
    if (action.kind === 'permanent') return 'G';
    return action.kind === 'imposed' ? `imposed ${action.category}` : action.kind;
}

/** Set by what is done, not by a load: its factor is 1 in every combination. */
export function isSet({ action }: UnitCase): boolean {
    return action === 'tightening' || action === 'lift';
}

/** May be absent from any span, so that patterns count: EN 1991-1-1 6.2.1(1), 6.2.2(1) (from memory). */
export function isFree(action: Action): boolean {
    return action.kind === 'imposed' || action.kind === 'construction';
}

/**
 * EN 1995-1-1 Table 2.2, as the notes of `EC5_load_duration` in the oracles' tables quote it: storage long-term, imposed
 * floor load medium-term, snow short-term (medium in some regions: say `lasting`), wind short-term or instantaneous.
 * Wind counts as short-term here, the safer of the two. Category H and construction loads: short-term, common
 * national practice, from memory.
 */
export function durationOf(load: Load): Duration {
    if (load.lasting) return load.lasting;
    switch (load.action.kind) {
        case 'permanent': return 'permanent';
        case 'imposed': return imposedDuration(load.action.category);
        case 'snow':
        case 'wind':
        case 'construction': return 'short-term';
    }
}

function imposedDuration(category: ImposedCategory): Duration {
    if (category === 'E') return 'long-term';
    return category === 'H' ? 'short-term' : 'medium-term';
}

/** 0 for permanent, rising as the duration gets shorter. */
export function shortness(duration: Duration): number {
    return durations.indexOf(duration);
}
