import type { Action, Duration } from '../../../../language/src/model.js';

export const loadDurationOrigin = 'EN 1995-1-1 Table 2.2, seen in an open textbook (TU Delft)';

/**
 * Load-duration class of an action that does not state its own. EN 1995-1-1 Table 2.2: storage is
 * long-term, imposed floor load medium-term, snow and wind short-term. Roofs reached for repair
 * alone (H) short-term, and traffic (F, G) and work in progress medium-term: common practice, no source.
 */
export function usualDuration(action: Action): Duration {
    switch (action.kind) {
        case 'permanent': return 'permanent';
        case 'imposed': return action.category === 'E' ? 'long-term' : action.category === 'H' ? 'short-term' : 'medium-term';
        case 'snow':
        case 'wind': return 'short-term';
        case 'construction': return 'medium-term';
    }
}
