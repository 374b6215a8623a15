/** The bolts between the leaves of a built-up member. */
import type { BoltRow, PliesSection } from '../../../../../language/src/model.js';
import type { MemberContext } from '../../check.js';
import { judgedCheck } from '../../judged.js';
import type { Leaf } from '../fasteners/leaf.js';
import { greatestHole } from '../fasteners/holes-and-washers.js';
import { clearanceSlip } from '../fasteners/slip.js';
import { named, shearAnswers, rowAnswers } from './bolt-answers.js';
import { distanceAnswers, piecesOfLeaves } from './drilled.js';
import { flitchBolts } from './flitch-bolts.js';
import { throughBolts, timberLeaf, unknownBolts } from './through-bolts.js';

export const pliesClause = 'EN 1995-1-1 8.2, 8.5.1';

export const plies = judgedCheck('plies', pliesClause, (context: MemberContext) => {
    const { section } = context.member;
    switch (section.shape) {
        case 'plies': {
            const bolts = throughBolts(section.bolts, context.actions.bolts ?? []);
            const leaves = leavesOf(context, section);
            return {
                answers: [...shearAnswers(context, bolts, leaves).map(answer => ({ ...answer, said: named(slipNote(section.bolts), answer.said) })), ...rowAnswers(context, bolts, leaves), ...distanceAnswers(context, bolts, piecesOfLeaves(context))],
                lacking: [...unknownBolts(section.bolts), ...unjoined(section.bolts, context)]
            };
        }
        case 'flitch': return flitchBolts(context, section);
        default: return { answers: [] };
    }
});

/** K_ser is of bolts that bear at once. */
function slipNote(rows: readonly BoltRow[]): string {
    const most = Math.max(...rows.map(({ diameter }) => clearanceSlip(diameter, greatestHole(diameter), greatestHole(diameter))));
    return `holes of the bolt's own diameter: drilled 1 mm over, each slips ${most} mm before it bears, which the deflection does not count (Table 7.1)`;
}

export function leavesOf({ strength }: MemberContext, { count, breadth }: PliesSection): readonly Leaf[] {
    return Array.from({ length: count }, () => timberLeaf(strength, breadth.value));
}

function unjoined(rows: readonly BoltRow[], { actions }: MemberContext): readonly string[] {
    return rows.some(({ places }) => places.length > 0) && !actions.bolts?.some(({ states }) => states.length > 0)
        ? ['there are no forces of the bolts'] : [];
}
