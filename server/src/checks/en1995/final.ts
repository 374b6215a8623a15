import type { MemberCheck, MemberContext } from '../check.js';
import { deflectionOutcomes } from './deflection.js';

export const final: MemberCheck = {
    name: 'final',
    clause: 'EN 1995-1-1 7.2, 2.2.3(3)',
    outcomes: context => deflectionOutcomes(context.actions.final, {
        symbol: 'w_{fin}', divisor: context.parameters.finalLimit, camber: camberOf(context), clause: 'EN 1995-1-1 Table 7.2',
        note: 'quasi-permanent combination with creep'
    }),
    lacking: context => context.member.precamber && !hasOneSpan(context) ? ['final: the precamber of a member with several spans is not counted'] : []
};

/** A precamber is a rise of one span between its supports. */
function camberOf(context: MemberContext): number {
    return context.member.precamber && hasOneSpan(context) ? context.member.precamber.value : 0;
}

function hasOneSpan({ actions }: MemberContext): boolean {
    return actions.spans.filter(span => !span.overhang).length === 1;
}
