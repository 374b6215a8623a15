import type { Check, HangerCheck, MemberCheck, MemberContext, SteelMemberCheck, SteelMemberContext } from './check.js';
import { bearing } from './en1995/bearing.js';
import { butt } from './en1995/leaves/butt.js';
import { ofOneLeaf } from './en1995/leaves/flitch-leaf.js';
import { flitchPlates } from './en1995/leaves/flitch-plates.js';
import { plies } from './en1995/leaves/plies.js';
import { netSection } from './en1995/net-section.js';
import { bending } from './en1995/bending.js';
import { compression } from './en1995/compression.js';
import { final } from './en1995/final.js';
import { instant } from './en1995/instant.js';
import { notch } from './en1995/notch.js';
import { shear } from './en1995/shear.js';
import { stability } from './en1995/stability.js';
import { tension } from './en1995/tension.js';
import { vibration } from './en1995/vibration.js';
import { steelBending } from './en1993/member/bending.js';
import { steelFinal, steelInstant } from './en1993/member/deflection.js';
import { steelInteraction } from './en1993/member/interaction.js';
import { steelShear } from './en1993/member/shear.js';
import { steelSplice } from './en1993/member/splice.js';
import { steelStability } from './en1993/member/stability.js';
import { steelWeb } from './en1993/member/web.js';
import { edge } from './hanger/edge.js';
import { grain } from './hanger/grain.js';
import { plates } from './hanger/plates.js';
import { rods } from './hanger/rods.js';
import { washers } from './hanger/washers.js';
import { masonry } from './en1996/masonry.js';

/** Every check of a timber member, in the order that a sheet shows them. What does not concern a member has no outcome there. */
export const memberChecks: readonly MemberCheck[] = [
    ...[bending, shear, stability, compression, tension].map(ofOneLeaf), bearing, masonry,
    ...[notch, netSection].map(ofOneLeaf), plies, butt, flitchPlates, instant, final, vibration
];

/** Every check of a steel member. */
export const steelChecks: readonly SteelMemberCheck[] = [
    steelBending, steelShear, steelInteraction, steelStability, steelWeb, steelSplice, masonry, steelInstant, steelFinal
];

/** Every check of a hanger. */
export const hangerChecks: readonly HangerCheck[] = [rods, plates, washers, grain, edge];

/** The checks of a member: by whether it is of steel. */
export function checksOf<C extends MemberContext | SteelMemberContext>(context: C): readonly Check<C>[] {
    // Each list takes the contexts of its own kind alone.
    return ('steel' in context ? steelChecks : memberChecks) as readonly Check<never>[] as readonly Check<C>[];
}
