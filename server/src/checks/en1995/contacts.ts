/** Where a member is pressed: its supports, and what bears on it. Lengths mm. */
import type { SupportActions } from '../../analysis/actions.js';
import type { Member } from '../../../../language/src/model.js';
import type { MemberContext } from '../check.js';
import { effectiveContactLength, kc90At, type ContactSide } from './contact.js';
import { wholeSection } from './section.js';

export interface Contact {
    readonly on: SupportActions;
    /** In words: `on north`, `under R1`. */
    readonly place: string;
    /** Along this member, and no further than its end. */
    readonly length: number;
    /** Across this member. */
    readonly width: number;
    readonly effective: number;
    readonly kc90: number;
    /** Clear distance to the nearest other contact. */
    readonly toNext: number;
    /** Between the force and the grain, rad. */
    readonly angle: number;
}

interface Size { readonly length: number; readonly width: number }
interface Patch { readonly from: number; readonly to: number }

/** Contacts that carry something and whose length is known. */
export function contactsOf(context: MemberContext): readonly Contact[] {
    const { member, actions, strength, loads } = context;
    const sized = pressing(context).flatMap(on => {
        const size = sizeOf(context, on);
        return size ? [{ on, size, patch: patchOf(member, on.at, size.length) }] : [];
    });
    const points: readonly Patch[] = loads.flatMap(({ point }) => point ? [{ from: point.at, to: point.at }] : []);
    return sized.map(({ on, size, patch }) => {
        const length = patch.to - patch.from;
        const others = [...sized.flatMap(other => other.on === on ? [] : [other.patch]), ...points];
        const before: ContactSide = { toEnd: patch.from, toNext: nearest(others.map(({ from, to }) => from >= patch.to ? Infinity : patch.from - to)) };
        const after: ContactSide = {
            toEnd: member.length.value - patch.to, toNext: nearest(others.map(({ from, to }) => to <= patch.from ? Infinity : from - patch.to))
        };
        const toNext = Math.min(before.toNext, after.toNext);
        return {
            on,
            place: actions.crossings.includes(on) ? `under ${on.support}` : `on ${on.support}`,
            length,
            width: Math.min(size.width, narrowest(context, patch)),
            effective: isAcross(member) ? effectiveContactLength(length, [before, after]) : length,
            kc90: kc90At(strength, length, toNext, wholeSection(member).h),
            toNext,
            angle: isAcross(member) ? Math.PI / 2 : member.kind === 'post' ? 0 : Math.PI / 2 - Math.abs(member.slope)
        };
    });
}

/** Contacts whose length the file does not say. */
export function contactsWithoutLength(context: MemberContext): readonly SupportActions[] {
    return pressing(context).filter(on => sizeOf(context, on) === undefined);
}

/** Vertical force stands at right angles to the grain of a level beam alone. */
function isAcross(member: Member): boolean {
    return member.kind === 'beam' && member.slope === 0;
}

/** What holds a post only sideways takes no vertical force: it is no bearing. */
function pressing({ member, actions }: MemberContext): readonly SupportActions[] {
    const supports = member.kind === 'post' ? actions.supports.filter(({ states }) => states.some(({ R }) => R !== 0)) : actions.supports;
    return [...supports, ...actions.crossings];
}

/**
 * Length along this member and width across it; undefined where the file does not say. Where two
 * beams cross, the length along the one is the width across the other; a post stands with its whole
 * end, its depth lying along the beam that it meets.
 */
function sizeOf({ member, actions, members }: MemberContext, on: SupportActions): Size | undefined {
    const other = members.find(({ name }) => name === on.support);
    if (other && actions.crossings.includes(on)) {
        const size = sizeBetween(other, member, on.bearing);
        return size && other.kind === 'beam' && member.kind === 'beam' ? { length: size.width, width: size.length } : size;
    }
    return sizeBetween(member, other, on.bearing);
}

/** Along and across the member that is carried. A carrier that is no member, or no rectangle, limits nothing. */
function sizeBetween(carried: Member, carrier: Member | undefined, bearing: number | undefined): Size | undefined {
    const own = wholeSection(carried);
    const whole = carried.kind === 'post' ? own.h : Infinity;
    const length = Math.min(bearing ?? whole, whole);
    if (length === Infinity) {
        return undefined;
    }
    if (carrier?.section.shape !== 'rectangle') {
        return { length, width: own.b };
    }
    const below = wholeSection(carrier);
    if (carrier.kind === 'post') {
        return { length: Math.min(length, below.h), width: Math.min(own.b, below.b) };
    }
    return carried.kind === 'post' ? { length, width: Math.min(own.b, below.b) } : { length: Math.min(length, below.b), width: own.b };
}

/** A contact is centred on its support and stops at the member's end; a post stands on its end. */
function patchOf(member: Member, at: number, length: number): Patch {
    return member.kind === 'post'
        ? { from: at, to: at + length }
        : { from: Math.max(0, at - length / 2), to: Math.min(member.length.value, at + length / 2) };
}

/** Least residual breadth over a contact. */
function narrowest({ member, actions }: MemberContext, patch: Patch): number {
    return actions.segments
        .filter(({ from, to }) => from < patch.to && to > patch.from)
        .reduce((least, { b }) => Math.min(least, b), wholeSection(member).b);
}

/** Nought where something presses on the contact itself. */
function nearest(gaps: readonly number[]): number {
    return Math.max(0, Math.min(Infinity, ...gaps));
}
