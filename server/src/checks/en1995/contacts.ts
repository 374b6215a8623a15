/** Where a member is pressed: its supports, and what bears on it. Lengths mm. */
import type { SupportActions } from '../../analysis/actions.js';
import type { Member } from '../../../../language/src/model.js';
import type { AnyMember, MemberContext } from '../check.js';
import { effectiveContactLength, kc90At, type ContactSide } from './contact.js';
import { leafCount, outline, wholeSection } from './section.js';

/** A contact with a wall or another member, whatever this member is of. */
export interface Patch {
    readonly on: SupportActions;
    /** In words: `on north`, `under R1`. */
    readonly place: string;
    readonly from: number;
    readonly to: number;
    /** Along this member, and no further than its end. */
    readonly length: number;
    /** Across this member. */
    readonly width: number;
}

/** A patch on timber. */
export interface Contact extends Patch {
    readonly effective: number;
    readonly kc90: number;
    /** Clear distance to the nearest other contact. */
    readonly toNext: number;
    /** Between the force and the grain, rad. */
    readonly angle: number;
}

interface Size { readonly length: number; readonly width: number }
export interface Stretch { readonly from: number; readonly to: number }

/** Contacts that carry something and whose length is known. */
export function patchesOf(context: AnyMember): readonly Patch[] {
    const { member, actions } = context;
    return pressing(context).flatMap(on => {
        const size = sizeOf(context, on);
        if (!size) {
            return [];
        }
        const stretch = stretchOf(member, on.at, size.length);
        const place = actions.crossings.includes(on) ? `under ${on.support}` : `on ${on.support}`;
        return [{ on, place, ...stretch, length: stretch.to - stretch.from, width: Math.min(size.width, narrowest(context, on, stretch)) }];
    });
}

export function contactsOf(context: MemberContext): readonly Contact[] {
    const { member, strength } = context;
    const patches = patchesOf(context);
    return patches.map(patch => {
        const sides = sidesOf(context, patch, patches.filter(other => other !== patch));
        const toNext = Math.min(...sides.map(side => side.toNext));
        return {
            ...patch,
            width: Math.min(patch.width, leafCount(member) * wholeSection(member).b),
            effective: isAcross(member) ? effectiveContactLength(patch.length, sides) : patch.length,
            kc90: kc90At(strength, patch.length, toNext, wholeSection(member).h),
            toNext,
            angle: isAcross(member) ? Math.PI / 2 : member.kind === 'post' ? 0 : Math.PI / 2 - Math.abs(member.slope)
        };
    });
}

/** What lies before and after a stretch of contact: other contacts, hangers' plates, loads at a point. */
export function sidesOf({ member, loads, hangers }: AnyMember, { from, to }: Stretch, contacts: readonly Stretch[]): readonly [ContactSide, ContactSide] {
    const points: readonly Stretch[] = loads.flatMap(({ point }) => point ? [{ from: point.at, to: point.at }] : []);
    const plates = hangers.flatMap(hanger => [
        ...hanger.carries === member.name ? [plateStretch(hanger.carriesAt.value, hanger.footPlate?.width.value)] : [],
        ...hanger.from === member.name ? [plateStretch(hanger.fromAt.value, hanger.headPlate?.width.value)] : []
    ]).filter(plate => plate.from > to || plate.to < from);
    const others = [...contacts, ...points, ...plates];
    return [
        { toEnd: from, toNext: nearest(others.map(other => other.from >= to ? Infinity : from - other.to)) },
        { toEnd: member.length.value - to, toNext: nearest(others.map(other => other.to <= from ? Infinity : other.from - to)) }
    ];
}

/** A hanger's plate on a member; no plate presses at a point. */
export function plateStretch(at: number, width = 0): Stretch {
    return { from: at - width / 2, to: at + width / 2 };
}

/** Contacts whose length the file does not say. */
export function contactsWithoutLength(context: AnyMember): readonly SupportActions[] {
    return pressing(context).filter(on => sizeOf(context, on) === undefined);
}

/** Vertical force stands at right angles to the grain of a level beam alone. */
function isAcross(member: Member): boolean {
    return member.kind === 'beam' && member.slope === 0;
}

/** What holds a post only sideways takes no vertical force: it is no bearing. */
function pressing({ member, actions }: AnyMember): readonly SupportActions[] {
    const supports = member.kind === 'post' ? actions.supports.filter(({ states }) => states.some(({ R }) => R !== 0)) : actions.supports;
    return [...supports, ...actions.crossings];
}

/**
 * Length along this member and width across it; undefined where the file does not say. Where two
 * beams cross, the length along the one is the width across the other; a post stands with its whole
 * end, its depth lying along the beam that it meets.
 */
function sizeOf({ member, actions, members }: AnyMember, on: SupportActions): Size | undefined {
    const other = members.find(({ name }) => name === on.support);
    if (other && actions.crossings.includes(on)) {
        const size = sizeBetween(other, member, on.bearing);
        return size && other.kind === 'beam' && member.kind === 'beam' ? { length: size.width, width: size.length } : size;
    }
    return sizeBetween(member, other, on.bearing);
}

/** Along and across the member that is carried. A carrier that is no member, or of unknown shape, limits nothing. */
function sizeBetween(carried: Member, carrier: Member | undefined, bearing: number | undefined): Size | undefined {
    const own = outline(carried);
    const whole = carried.kind === 'post' ? own.h : Infinity;
    const length = Math.min(bearing ?? whole, whole);
    if (length === Infinity) {
        return undefined;
    }
    const below = carrier && outline(carrier);
    if (!carrier || !below || Number.isNaN(below.b)) {
        return { length, width: own.b };
    }
    if (carrier.kind === 'post') {
        return { length: Math.min(length, below.h), width: Math.min(own.b, below.b) };
    }
    return carried.kind === 'post' ? { length, width: Math.min(own.b, below.b) } : { length: Math.min(length, below.b), width: own.b };
}

/** A contact is centred on its support and stops at the member's end; a post stands on its end. */
function stretchOf(member: Member, at: number, length: number): Stretch {
    return member.kind === 'post'
        ? { from: at, to: at + length }
        : { from: Math.max(0, at - length / 2), to: Math.min(member.length.value, at + length / 2) };
}

/** Least residual breadth over a contact, of all leaves that bear there together. */
export function narrowest({ member, actions }: AnyMember, on: Pick<SupportActions, 'support' | 'at'> | undefined, { from, to }: Stretch): number {
    const bearing = on && member.supports.find(support => support.on === on.support && support.at.value === on.at)?.leaves;
    const whole = outline(member).b;
    const single = wholeSection(member).b;
    const least = (leaf?: number): number => actions.segments
        .filter(segment => segment.leaf === leaf && segment.from < to && segment.to > from)
        .reduce((breadth, { b }) => Math.min(breadth, b), leaf === undefined ? whole : single);
    return actions.leaves
        ? (bearing ?? Array.from({ length: leafCount(member) }, (_, i) => i + 1)).reduce((sum, leaf) => sum + least(leaf), 0)
        : least();
}

/** Nought where something presses on the contact itself. */
function nearest(gaps: readonly number[]): number {
    return Math.max(0, Math.min(Infinity, ...gaps));
}
