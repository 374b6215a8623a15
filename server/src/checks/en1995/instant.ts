import type { MemberCheck } from '../check.js';
import { deflectionLacking, deflectionOutcomes } from './deflection.js';

export const instant: MemberCheck = {
    name: 'instant',
    clause: 'EN 1995-1-1 7.2, 2.2.3(2)',
    outcomes: ({ actions, parameters }) => deflectionOutcomes(actions.instant, {
        symbol: 'w_{inst}', divisor: parameters.instantLimit, note: 'characteristic combination'
    }),
    lacking: ({ actions, member }) => deflectionLacking('instant', member, actions.instant)
};
