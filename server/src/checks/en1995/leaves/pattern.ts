/** Every distance of a member's bolts by EN 1995-1-1 Table 8.4: those that `plies` judges, kept or not. */
import type { BoltDistance } from '../../../results.js';
import type { MemberContext } from '../../check.js';
import { drilledDistances, piecesOfLeaves } from './drilled.js';
import { drilledFlitch } from './flitch-bolts.js';
import { throughBolts } from './through-bolts.js';

/** Empty where the forces of the bolts, which tell loaded ends and edges from others, are not known. */
export function boltDistances(context: MemberContext): readonly BoltDistance[] {
    const { section } = context.member;
    if (section.shape === 'plies') {
        return drilledDistances(context, throughBolts(section.bolts, context.actions.bolts ?? []), piecesOfLeaves(context));
    }
    const drilled = section.shape === 'flitch' ? drilledFlitch(context, section) : '';
    return typeof drilled === 'string' ? [] : drilledDistances(context, drilled.bolts, drilled.pieces);
}
