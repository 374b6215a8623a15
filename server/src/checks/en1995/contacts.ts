/** Where a member is pressed: its supports, and what bears on it. Lengths mm. */
import type { SupportActions } from '../../analysis/actions.js';
import type { MemberContext } from '../check.js';
import { kc90At, effectiveContactLength, type ContactSide } from './contact.js';
import { wholeSection } from './section.js';

export interface Contact {
    readonly on: SupportActions;
    /** In words: `on north`. */
    readonly place: string;
    /** On the member, so no further than its end. */
    readonly length: number;
    readonly width: number;
    readonly effective: number;
    readonly kc90: number;
    /** Clear distance to the nearest other contact. */
    readonly toNext: number;
    /** Between the force and the grain, rad. */
    readonly angle: number;
}

interface Patch { readonly from: number; readonly to: number }

/** Contacts whose length is known. */
export function contactsOf(context: MemberContext): readonly Contact[] {
    const { member, actions, strength, loads } = context;
    const patches = new Map(pressing(context).map(on => [on, patchOf(context, on)]));
    const others: readonly Patch[] = [
        ...patches.values(),
        ...loads.flatMap(({ point }) => point ? [{ from: point.at, to: point.at }] : [])
    ];
    return [...patches].filter(([on]) => lengthOf(context, on) !== undefined).map(([on, patch]) => {
        const length = patch.to - patch.from;
        const before: ContactSide = { toEnd: patch.from, toNext: gapBefore(patch, others) };
        const after: ContactSide = { toEnd: member.length.value - patch.to, toNext: gapAfter(patch, others) };
        const toNext = Math.min(before.toNext, after.toNext);
        const angle = Math.PI / 2 - member.slope;
        return {
            on,
            place: actions.crossings.includes(on) ? `under ${on.support}` : `on ${on.support}`,
            length,
            width: widthOf(context, on, patch),
            effective: member.slope === 0 ? effectiveContactLength(length, [before, after]) : length,
            kc90: kc90At(strength, length, toNext, wholeSection(member).h),
            toNext,
            angle
        };
    });
}

/** Contacts whose length the file does not say. */
export function contactsWithoutLength(context: MemberContext): readonly SupportActions[] {
    return pressing(context).filter(on => lengthOf(context, on) === undefined);
}

function pressing({ actions }: MemberContext): readonly SupportActions[] {
    return [...actions.supports, ...actions.crossings];
}

/** A post stands on the whole of its end where nothing else is said. */
function lengthOf({ member }: MemberContext, on: SupportActions): number | undefined {
    return on.bearing ?? (member.kind === 'post' ? wholeSection(member).h : undefined);
}

/** A beam's contact is centred on its support and stops at the member's end; a post stands on its end. */
function patchOf(context: MemberContext, on: SupportActions): Patch {
    const length = lengthOf(context, on) ?? 0;
    return context.member.kind === 'post'
        ? { from: on.at, to: on.at + length }
        : { from: Math.max(0, on.at - length / 2), to: Math.min(context.member.length.value, on.at + length / 2) };
}

function widthOf({ member, actions, all }: MemberContext, on: SupportActions, patch: Patch): number {
    const own = actions.segments
        .filter(segment => segment.from <= patch.to && segment.to >= patch.from)
        .reduce((least, segment) => Math.min(least, segment.b), wholeSection(member).b);
    const carried = actions.crossings.includes(on) ? all.members.find(({ member: name }) => name === on.support) : undefined;
    const reach = carried?.supports.find(({ support }) => support === member.name)?.bearing ?? Infinity;
    return Math.min(own, reach);
}

function gapBefore(patch: Patch, others: readonly Patch[]): number {
    return others.reduce((gap, { from, to }) => from < patch.from ? Math.min(gap, Math.max(0, patch.from - to)) : gap, Infinity);
}

function gapAfter(patch: Patch, others: readonly Patch[]): number {
    return others.reduce((gap, { from, to }) => to > patch.to ? Math.min(gap, Math.max(0, from - patch.to)) : gap, Infinity);
}
