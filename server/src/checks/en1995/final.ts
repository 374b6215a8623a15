import type { MemberCheck } from '../check.js';
import { deflectionLacking, deflectionOutcomes } from './deflection.js';

/** The analysis takes the precamber off. */
export const final: MemberCheck = {
    name: 'final',
    clause: 'EN 1995-1-1 7.2, 2.2.3(3)',
    outcomes: ({ actions, member, parameters }) => deflectionOutcomes(actions.final, {
        symbol: 'w_{fin}', divisor: parameters.finalLimit,
        note: `quasi-permanent combination with creep${member.precamber ? `, less the precamber of ${member.precamber.value} mm` : ''}`
    }),
    lacking: ({ actions, member }) => deflectionLacking('final', member, actions.final)
};
