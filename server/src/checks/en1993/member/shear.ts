import type { SteelMemberContext } from '../../check.js';
import { answersAlong, judgedCheck } from '../../judged.js';
import { shear, shearClause } from '../shear.js';

export const steelShear = judgedCheck('shear', shearClause, ({ actions, steel }: SteelMemberContext) => ({
    answers: answersAlong(actions, ({ V }) => shear(steel, V))
}));
