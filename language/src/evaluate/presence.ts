/** What is there in which stage: nothing is removed that never was, nor stands on what is not there yet. */
import type { Given, Hanger, Member, SourceRef } from '../model.js';
import { length } from '../quantity.js';
import { formatQuantity } from '../units.js';
import type { Context } from './context.js';
import { fail, report } from './context.js';
import { notComputed } from './not-computed.js';
import { outside } from './supports.js';

export type StageEvent =
    | { readonly kind: 'add' | 'remove' | 'tighten'; readonly name: string; readonly source: SourceRef }
    | { readonly kind: 'prop'; readonly name: string; readonly at: Given; readonly source: SourceRef }
    /** Without a name every prop. */
    | { readonly kind: 'release'; readonly name?: string; readonly source: SourceRef };

export interface StageEvents { readonly name: string; readonly events: readonly StageEvent[]; readonly source: SourceRef }

type Prop = Extract<StageEvent, { kind: 'prop' }>;

interface Site {
    readonly context: Context;
    readonly members: ReadonlyMap<string, Member>;
    readonly there: Set<string>;
    /** Where an element was added last. */
    readonly added: Map<string, SourceRef>;
    /** By the member that they hold. */
    readonly props: Map<string, Prop[]>;
}

/** `declared`: the names of members and hangers, sound or not. */
export function checkPresence(context: Context, stages: readonly StageEvents[], members: readonly Member[], hangers: readonly Hanger[], declared: Iterable<string>): void {
    const later = new Set(stages.flatMap(stage => stage.events).filter(event => event.kind === 'add').map(event => event.name));
    const site: Site = {
        context, members: new Map(members.map(member => [member.name, member])),
        there: new Set([...declared].filter(name => !later.has(name))), added: new Map(), props: new Map()
    };
    const told = new Set<string>();
    for (const stage of stages) {
        const changes = stage.events.filter(event => event.kind === 'add' || event.kind === 'remove');
        changes.forEach(event => change(site, event as typeof event & { name: string }, stage.name));
        stage.events.filter(event => !changes.includes(event)).forEach(event => act(site, event, stage.name));
        reportUnheld(site, stage, hangers, told);
    }
}

function change({ context, there, added, props }: Site, { kind, name, source }: StageEvent & { readonly name: string }, stage: string): void {
    if (kind === 'add') {
        const first = added.get(name);
        if (there.has(name)) {
            fail(context, 'added-twice', `${name} is there already in stage ${stage}`, source, first && { related: [{ message: 'it is added here', source: first }] });
        }
        there.add(name);
        added.set(name, source);
        return;
    }
    if (!there.has(name)) {
        fail(context, 'never-there', `${name} is not there in stage ${stage}: nothing has added it before`, source);
    }
    there.delete(name);
    props.delete(name);
}

function act(site: Site, event: StageEvent, stage: string): void {
    const { context, there, props } = site;
    const { source } = event;
    if (event.kind === 'release') {
        const standing = event.name === undefined ? [...props.values()].some(list => list.length > 0) : (props.get(event.name)?.length ?? 0) > 0;
        if (!standing) {
            fail(context, 'no-prop', event.name === undefined ? `no prop stands in stage ${stage}` : `no prop stands under ${event.name} in stage ${stage}`, source);
        }
        if (event.name === undefined) { props.clear(); } else { props.delete(event.name); }
        return;
    }
    if (!there.has(event.name)) {
        fail(context, 'not-there', `${event.name} is not there in stage ${stage}: add it before, or in this stage`, source);
    } else if (event.kind === 'prop') {
        prop(site, event);
    }
}

function prop({ context, members, props }: Site, event: Prop): void {
    const member = members.get(event.name);
    const at = event.at.value;
    const others = props.get(event.name) ?? [];
    props.set(event.name, [...others, event]);
    if (member === undefined) {
        return;
    }
    if (at < 0 || at > member.length.value) {
        fail(context, 'prop-outside', `this prop is ${outside(at, member.length.value)} of ${member.name}`, event.at.source);
        return;
    }
    const held = [...member.supports, ...others].find(other => Math.abs(other.at.value - at) < 1e-6);
    if (held !== undefined) {
        fail(context, 'duplicate-support', `${member.name} has a support at this station already`, event.at.source, { related: [{ message: 'the first is here', source: held.source }] });
    }
    const loss = member.losses.find(({ from, to, faces }) => (faces.bottom?.value ?? 0) > 0 && from.value <= at && at <= to.value);
    if (loss !== undefined) {
        const place = formatQuantity({ value: at, dimension: length });
        report(context, 'warning', 'prop-under-loss', `this prop bears where the bottom of ${member.name} is lost: move it to firm wood, or pack it against what is left`, event.at.source,
            { related: [{ message: 'the loss is here', source: loss.source }] });
        notComputed(context, 'prop under a loss', `${member.name}.prop at ${place}`, [member.name], event.source);
    }
}

/** At the end of a stage each thing that is there stands on, or hangs between, what is there. */
function reportUnheld({ context, members, there }: Site, stage: StageEvents, hangers: readonly Hanger[], told: Set<string>): void {
    const say = (name: string, needed: string, how: string) => {
        if (there.has(name) && !there.has(needed) && !told.has(`${name} ${needed}`)) {
            told.add(`${name} ${needed}`);
            const at = stage.events.find(event => event.kind !== 'release' && (event.name === name || event.name === needed))?.source ?? stage.source;
            fail(context, 'not-there', `${name} ${how} ${needed}, which is not there in stage ${stage.name}`, at);
        }
    };
    for (const hanger of hangers) {
        say(hanger.name, hanger.carries, 'carries');
        say(hanger.name, hanger.from, 'hangs from');
    }
    for (const member of members.values()) {
        member.supports.filter(support => support.kind === 'member').forEach(support => say(member.name, support.on, 'stands on'));
    }
}
