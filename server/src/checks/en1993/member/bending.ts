import type { SteelMemberContext } from '../../check.js';
import { answersAlong, judgedCheck } from '../../judged.js';
import { bending, bendingClause } from '../bending.js';

export const steelBending = judgedCheck('bending', bendingClause, ({ actions, steel }: SteelMemberContext) => ({
    answers: answersAlong(actions, ({ M }) => bending(steel, M))
}));
