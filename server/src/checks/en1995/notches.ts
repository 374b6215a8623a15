/** Which notches stand at a support, and which in the field. Lengths mm. */
import type { Notch } from '../../../../language/src/model.js';
import type { SupportActions } from '../../analysis/actions.js';
import type { MemberContext } from '../check.js';
import type { NotchShape } from './notch-factor.js';

/** One corner of a notch at a support. */
export interface NotchCorner {
    readonly notch: Notch;
    readonly on: SupportActions;
    /** Station of the corner. */
    readonly at: number;
    /** Residual breadth. */
    readonly b: number;
    readonly shape: NotchShape;
    /** On the side that the support presses: 6.5.2(2) else gives k_v = 1. */
    readonly facesSupport: boolean;
}

const touching = 1e-6;

/** Every corner, inside the member, of a notch that reaches over a support. */
export function notchCorners(context: MemberContext): readonly NotchCorner[] {
    const { member, actions } = context;
    return member.notches.flatMap(notch => supportsAt(context, notch).flatMap(on => {
        const left = actions.segments.filter(({ from, to }) => from < notch.to.value - touching && to > notch.from.value + touching);
        const b = left.reduce((least, segment) => Math.min(least, segment.b), Infinity);
        const hef = left.reduce((least, segment) => Math.min(least, segment.h), Infinity);
        return [notch.from.value, notch.to.value]
            .filter(at => at > touching && at < member.length.value - touching)
            .map((at): NotchCorner => ({
                notch, on, at, b,
                shape: { h: hef + notch.depth.value, hef, x: Math.abs(at - on.at), i: notch.taper.value / notch.depth.value },
                facesSupport: notch.face === 'bottom'
            }));
    }));
}

/**
 * Notches away from supports that bending opens: on the tension side, and tapered by less than 1:10,
 * so that 6.5.1(2) does not let their stress concentration be disregarded.
 */
export function openedFieldNotches(context: MemberContext): readonly Notch[] {
    return context.member.notches.filter(notch =>
        supportsAt(context, notch).length === 0 && notch.taper.value < 10 * notch.depth.value && isInTension(context, notch));
}

function supportsAt({ actions }: MemberContext, notch: Notch): readonly SupportActions[] {
    return actions.supports.filter(({ at, bearing = 0 }) =>
        at + bearing / 2 >= notch.from.value - touching && at - bearing / 2 <= notch.to.value + touching);
}

function isInTension({ actions }: MemberContext, { face, from, to }: Notch): boolean {
    const moments = (inside: (x: number) => boolean): number[] =>
        actions.stations.filter(({ x }) => inside(x)).flatMap(({ states }) => states.map(({ M }) => face === 'bottom' ? M : -M));
    const greatest = Math.max(0, ...moments(() => true).map(Math.abs));
    return moments(x => x >= from.value - touching && x <= to.value + touching).some(M => !(M <= 1e-6 * greatest));
}
