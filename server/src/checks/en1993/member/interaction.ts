import type { SteelMemberContext } from '../../check.js';
import { answersAlong, judgedCheck } from '../../judged.js';
import { interaction, interactionClause } from '../interaction.js';

export const steelInteraction = judgedCheck('interaction', interactionClause, ({ actions, steel }: SteelMemberContext) => ({
    answers: answersAlong(actions, forces => interaction(steel, forces))
}));
