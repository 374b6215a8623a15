import type { Fastener } from './fastener.js';
import type { Force } from './force.js';
import { alone, sideOf, type Leaf } from './leaf.js';

/** More than the Johansen part of any mode is of its capacity: 1.15 of 8.2.2 with 25 % of rope effect on top. */
const mostOverPlain = 1.15 * 1.25;

/**
 * Moment, N·mm, that the bolt can have in the middle of every inner leaf of four or more, loaded to and fro by `force`
 * in each plane. The hinges of (8.7) j and k need the yield moment there; but between two inner leaves the moment has to
 * turn from one sign to the other within half of each, and stout bolts in thin leaves cannot do that: the modes are
 * not compatible then, EN 1995-1-1 8.1.3(2). With a bearing of ±f_h d over half a leaf, L, and a net force F:
 * m = f_h d (L²/2 − a²), a = (L − F / f_h d) / 2. It grows with F, so that a first, lower F is on the safe side.
 * Own derivation from the lower-bound theorem of plasticity, no published source.
 */
export function innerHinge(leaves: readonly Leaf[], fastener: Fastener, force: Force, strengthWith: (My: number) => number): number {
    const halves = leaves.slice(1, -1).flatMap(leaf => {
        const side = sideOf(leaf, fastener, force, alone);
        return side.kind === 'timber' ? [{ bearing: side.fh_k * fastener.d_ef, L: side.thickness / 2 }] : [];
    });
    const momentAt = (F: number): number => halves.reduce((least, { bearing, L }) => {
        const a = Math.max(0, L - F / bearing) / 2;
        return Math.min(least, bearing * (L ** 2 / 2 - a ** 2));
    }, fastener.My_Rk);
    return momentAt(strengthWith(momentAt(0)) / mostOverPlain);
}
