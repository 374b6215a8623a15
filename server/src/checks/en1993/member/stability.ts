/** Which length may buckle sideways at each station, and with what diagram: from the actions to `stability`. */
import type { ActionState, Combination, Span, Station } from '../../../analysis/actions.js';
import type { SteelMemberContext } from '../../check.js';
import { lateralBucklingLength, spanBucklingLength } from '../../en1995/free-length.js';
import { judgedCheck, whereAt, type Answer } from '../../judged.js';
import { problem, type Problem, type Verdict } from '../../verdict.js';
import { shapeOfDiagram, uniformLoad, type MomentShape } from '../critical-moment.js';
import { stability, stabilityClause } from '../stability.js';

/** No diagram known: the same moment all along, and yet the loads of a span on it. On the safe side. */
const leastFavourable: MomentShape = { C1: 1, C2: uniformLoad.C2, source: 'the same moment all along, loaded as a span' };
/** A moment below this is rounding in the analysis, N mm. */
const negligible = 1;

/** Loads are taken to stand on the top flange. An overhang is not covered: its tip is free to twist. */
export const steelStability = judgedCheck('stability', stabilityClause, (context: SteelMemberContext) => ({
    answers: spansOf(context).flatMap(span => answersIn(context, span))
}));

/** Spans, and the overhangs that have a moment. */
function spansOf({ actions, member }: SteelMemberContext): readonly Span[] {
    return actions.spans.length > 0 ? actions.spans : [{ from: 0, to: member.length.value, overhang: true }];
}

function answersIn(context: SteelMemberContext, span: Span): readonly Answer[] {
    const stations = context.actions.stations.filter(({ x }) => x >= span.from && x <= span.to);
    const diagrams = diagramsOf(stations);
    return stations.flatMap(station => station.states.flatMap((state): Answer[] =>
        Math.abs(state.M) < negligible && state.N > -negligible
            ? [] : [{ said: say(context, span, state, diagrams.get(state.combination)), where: whereAt(station, state) }]));
}

function say(context: SteelMemberContext, span: Span, { M, N }: ActionState, whole: MomentShape | undefined): Verdict | Problem {
    const { member, steel } = context;
    if (span.overhang) {
        return problem('an overhang, whose end is free to twist, is not covered');
    }
    const length = span.to - span.from;
    const held = M >= 0 && member.restraint !== undefined && member.restraint.value < length;
    return stability(steel, {
        M, N,
        lateral: {
            length: held ? member.restraint!.value : length,
            shape: held ? leastFavourable : whole ?? leastFavourable,
            loadHeight: steel.section.h / 2
        },
        bucklingLength: { y: spanBucklingLength(span), z: lateralBucklingLength(span, member) }
    });
}

/** C1 and C2 of each combination that is known at every station of the span. */
function diagramsOf(stations: readonly Station[]): ReadonlyMap<Combination, MomentShape> {
    const points = new Map<Combination, { x: number; M: number }[]>();
    stations.forEach(({ x, states }, i) => {
        for (const { combination, M } of states) {
            const line = points.get(combination) ?? [];
            const seen = line.at(-1);
            if (line.length === i) {
                line.push({ x, M });
                points.set(combination, line);
            } else if (seen && line.length === i + 1 && Math.abs(M) > Math.abs(seen.M)) {
                seen.M = M;
            }
        }
    });
    return new Map([...points].filter(([, line]) => line.length === stations.length).map(([combination, line]) => [combination, shapeOfDiagram(line)]));
}
