import type { Deflection } from '../../../analysis/actions.js';
import type { SteelMemberCheck, SteelMemberContext } from '../../check.js';
import { deflectionLacking, deflectionOutcomes, type DeflectionLimit } from '../../en1995/deflection.js';

/** EN 1993-1-1 7.2.1 leaves the limits to the nations: those of the basis are taken for both. */
const clause = 'EN 1993-1-1 7.2.1, limit of the basis';

function deflectionCheck(
    name: 'instant' | 'final', limit: (context: SteelMemberContext) => DeflectionLimit
): SteelMemberCheck {
    const of = ({ actions }: SteelMemberContext): readonly Deflection[] => actions[name];
    return {
        name, clause,
        outcomes: context => deflectionOutcomes(of(context), limit(context)),
        lacking: context => deflectionLacking(name, context.member, of(context))
    };
}

export const steelInstant = deflectionCheck('instant', ({ parameters }) => ({
    symbol: 'w_{inst}', divisor: parameters.instantLimit, note: 'characteristic combination'
}));

/** Steel does not creep, but timber that it meets may. */
export const steelFinal = deflectionCheck('final', ({ parameters }) => ({
    symbol: 'w_{fin}', divisor: parameters.finalLimit, note: 'quasi-permanent combination'
}));
