/** One timber leaf of a flitch beam, so that the checks of timber look at it as at any rectangle. */
import type { FlitchSection } from '../../../../../language/src/model.js';
import type { MemberCheck, MemberContext } from '../../check.js';
import { isProblem, type Problem } from '../../verdict.js';
import { plateMoment, timberShares } from './flitch-shares.js';

const known = new WeakMap<MemberContext, MemberContext | Problem>();

/** The same check, of one leaf where the member is a flitch beam. */
export function ofOneLeaf(check: MemberCheck): MemberCheck {
    return {
        ...check,
        outcomes: context => {
            const leaf = leafOf(context);
            return isProblem(leaf) ? [] : check.outcomes(leaf);
        },
        lacking: context => {
            const leaf = leafOf(context);
            return isProblem(leaf) ? [`${check.name}: ${leaf.problem}`] : check.lacking?.(leaf) ?? [];
        }
    };
}

function leafOf(context: MemberContext): MemberContext | Problem {
    const { section } = context.member;
    if (section.shape !== 'flitch') {
        return context;
    }
    const found = known.get(context) ?? flitchLeaf(context, section);
    known.set(context, found);
    return found;
}

/** The leaves take what the plates do not, and all of the shear and the axial force: at the ends nothing else can. */
function flitchLeaf(context: MemberContext, section: FlitchSection): MemberContext | Problem {
    const shares = timberShares(context, section);
    if (isProblem(shares)) {
        return shares;
    }
    const { actions } = context;
    const n = section.leaves;
    return {
        ...context,
        actions: {
            ...actions,
            segments: actions.segments.map(segment => segment.weakened
                ? { ...segment, b: NaN, h: NaN } : { ...segment, b: section.breadth.value, h: section.depth.value }),
            stations: actions.stations.map(station => ({
                ...station,
                states: station.states.map(state => ({
                    ...state, N: state.N / n, V: state.V / n,
                    M: (state.M - plateMoment(context, section, shares.steel, station.x, state.combination)) / n
                }))
            }))
        }
    };
}
