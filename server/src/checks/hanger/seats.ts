/** The two ends of a hanger with the members as they are there. */
import type { Hanger } from '../../../../language/src/model.js';
import type { HangerContext, MemberContext, SteelMemberContext } from '../check.js';
import { narrowest, plateStretch, type Stretch } from '../en1995/contacts.js';
import { outline } from '../en1995/section.js';
import { judgedCheck, type Answer, type Judged } from '../judged.js';
import { isProblem, type Problem, type Verdict } from '../verdict.js';
import { rodLayout, stiffOver, type RodLayout, type Seat } from './layout.js';

export interface SeatContext extends Seat {
    readonly context: MemberContext | SteelMemberContext;
    /** The plate on the member. */
    readonly stretch: Stretch;
}

export function seatsOf({ hanger, carrier, carried }: HangerContext): readonly [SeatContext, SeatContext] {
    return [seat('head', carrier, hanger.fromAt.value, hanger.headPlate), seat('foot', carried, hanger.carriesAt.value, hanger.footPlate)];
}

function seat(which: Seat['which'], context: MemberContext | SteelMemberContext, at: number, plate: Hanger['headPlate']): SeatContext {
    const stretch = plateStretch(at, plate?.width.value);
    const here = context.actions.segments.filter(({ from, to }) => from <= stretch.to && to >= stretch.from);
    const breadth = 'steel' in context ? context.steel.section.b : narrowest(context, undefined, stretch);
    return {
        which, context, stretch, member: context.member.name, breadth,
        depth: Math.min(outline(context.member).h, ...here.map(({ h }) => h)),
        shift: Math.max(0, ...here.map(({ shiftRight }) => Math.abs(shiftRight))),
        stiff: 'steel' in context ? stiffOver(context.steel.section) : breadth,
        ...plate && { plate }
    };
}

/** A check that says something of every state of the hanger, for rods laid out. */
export function hangerCheck(
    name: string, clause: string,
    say: (context: HangerContext, layout: RodLayout, seats: readonly SeatContext[]) => {
        readonly each?: (force: number, duration: HangerContext['actions']['states'][number]['combination']['duration']) => readonly (Verdict | Problem)[];
        readonly lacking?: readonly string[];
    }
) {
    return judgedCheck(name, clause, (context: HangerContext): Judged => {
        const seats = seatsOf(context);
        const layout = rodLayout(context.hanger, seats);
        if (isProblem(layout)) {
            return { answers: [], lacking: [layout.problem] };
        }
        const { each, lacking } = say(context, layout, seats);
        const answers = context.actions.states.flatMap(({ combination, N }) => (each?.(N, combination.duration) ?? [])
            .map((said): Answer => ({ said, where: { combination, at: context.hanger.carriesAt.value } })));
        return { answers, ...lacking && { lacking } };
    });
}
