import type { Reference } from 'langium';
import * as ast from '../generated/ast.js';
import type { Given, Hanger, Member, Stage, StageStep } from '../model.js';
import type { Context } from './context.js';
import { source, sourceOfReference } from './context.js';
import type { Expectation } from './inputs.js';
import { aDepth, aForce, aStation, given, unsaid } from './inputs.js';
import { resolve } from './names.js';
import { notComputed } from './not-computed.js';
import { memberNamesOf } from './details.js';
import type { StageEvent } from './presence.js';

export interface EvaluatedStage { readonly stage: Stage; readonly events: readonly StageEvent[]; readonly node: ast.Stage }

const tightening: Expectation = { ...aForce, sign: 'not negative' };
type Element = (ast.Member | ast.Hanger | ast.Use) & { readonly name: string };
const isElement = (node: unknown): node is Element => ast.isMember(node) || ast.isHanger(node) || ast.isUse(node);
const isHung = (node: unknown): node is (ast.Hanger | ast.Use) & { readonly name: string } => ast.isHanger(node) || ast.isUse(node);

/** One stage by itself; what is there when is looked at in `presence.ts`. */
export function evaluateStage(context: Context, node: ast.Stage): EvaluatedStage {
    const events: StageEvent[] = [];
    const steps = node.steps.flatMap(step => stepOf(context, node, step, events) ?? []);
    notComputed(context, 'stages', `stage ${node.name}`, namedMembers(context, node), source(context, node));
    return {
        stage: { name: node.name, ...(node.title !== undefined && { title: node.title }), steps, source: source(context, node) },
        events, node
    };
}

function stepOf(context: Context, stage: ast.Stage, step: ast.StageStep, events: StageEvent[]): StageStep | undefined {
    const at = source(context, step);
    const named = (references: readonly Reference[], wanted: typeof isElement | typeof isHung, kind: string, say: 'add' | 'remove' | 'tighten'): string[] =>
        references.flatMap(reference => elementsOf(context, reference, step, wanted, kind).map(name => {
            events.push({ kind: say, name, source: sourceOfReference(context, reference, step) });
            return name;
        }));
    switch (step.$type) {
        case 'Add': return nonEmpty({ kind: 'add', elements: named(step.elements, isElement, 'a member or a hanger', 'add'), source: at });
        case 'Remove': return nonEmpty({ kind: 'remove', elements: named(step.elements, isElement, 'a member or a hanger', 'remove'), source: at });
        case 'Tighten': {
            const hangers = named(step.hangers, isHung, 'a hanger', 'tighten');
            const force = given(context, step.force, `${stage.name}.${hangers[0] ?? 'hanger'}.tighten`, tightening);
            return force && hangers.length > 0 ? { kind: 'tighten', hangers, force, source: at } : undefined;
        }
        case 'Prop': return propOf(context, stage, step, events);
        case 'Release': return releaseOf(context, step, events);
    }
}

const nonEmpty = <S extends Extract<StageStep, { readonly elements: unknown }>>(step: S): S | undefined => (step.elements.length === 0 ? undefined : step);

/** The use of a detail stands for all that it makes. */
function elementsOf(context: Context, reference: Reference, node: ast.StageStep, wanted: typeof isElement | typeof isHung, kind: string): readonly string[] {
    const thing = resolve(context, reference, node, wanted as typeof isElement, kind);
    if (!ast.isUse(thing)) {
        return thing === undefined ? [] : [thing.name];
    }
    const members = memberNamesOf(context, thing.name);
    return (context.made.get(thing.name) ?? []).filter(name => wanted === isElement || !members.includes(name));
}

function propOf(context: Context, stage: ast.Stage, step: ast.Prop, events: StageEvent[]): StageStep | undefined {
    const member = resolve(context, step.member, step, ast.isMember, 'a member');
    const path = `${stage.name}.${member?.name ?? 'prop'}`;
    const at = given(context, step.at, `${path}.prop`, aStation);
    const lift: Given | undefined = step.lift === undefined ? unsaid(0, `${path}.lift`, source(context, step)) : given(context, step.lift, `${path}.lift`, aDepth);
    if (member === undefined || at === undefined) {
        return undefined;
    }
    events.push({ kind: 'prop', name: member.name, at, source: source(context, step) });
    return lift && { kind: 'prop', member: member.name, at, lift, source: source(context, step) };
}

function releaseOf(context: Context, step: ast.Release, events: StageEvent[]): StageStep | undefined {
    if (step.all !== undefined) {
        events.push({ kind: 'release', source: source(context, step) });
        return { kind: 'release', members: 'all', source: source(context, step) };
    }
    const members = step.members.flatMap(reference => {
        const member = resolve(context, reference, step, ast.isMember, 'a member');
        return member === undefined ? [] : [{ name: member.name, at: sourceOfReference(context, reference, step) }];
    });
    members.forEach(({ name, at }) => events.push({ kind: 'release', name, source: at }));
    return members.length === 0 ? undefined : { kind: 'release', members: members.map(({ name }) => name), source: source(context, step) };
}

/** The members that a stage names, or that a hanger joins which it names. */
function namedMembers(context: Context, stage: ast.Stage): readonly string[] {
    const references = stage.steps.flatMap((step): readonly Reference[] => {
        switch (step.$type) {
            case 'Add': case 'Remove': return step.elements;
            case 'Tighten': return step.hangers;
            case 'Prop': return [step.member];
            case 'Release': return step.members;
        }
    });
    return references.map(reference => reference?.$refText ?? '').filter(name => ast.isMember(context.names.things.get(name)));
}

/** What is left of a stage when members and hangers that cannot be trusted are left out. */
export function withoutUnsound(stage: Stage, members: readonly Member[], hangers: readonly Hanger[]): Stage {
    const isMember = (name: string) => members.some(member => member.name === name);
    const isHanger = (name: string) => hangers.some(hanger => hanger.name === name);
    const steps = stage.steps.flatMap((step): readonly StageStep[] => {
        switch (step.kind) {
            case 'add': case 'remove': {
                const elements = step.elements.filter(name => isMember(name) || isHanger(name));
                return elements.length === 0 ? [] : [{ ...step, elements }];
            }
            case 'tighten': {
                const left = step.hangers.filter(isHanger);
                return left.length === 0 ? [] : [{ ...step, hangers: left }];
            }
            case 'prop': return isMember(step.member) ? [step] : [];
            case 'release': {
                const left = step.members === 'all' ? step.members : step.members.filter(isMember);
                return left.length === 0 ? [] : [{ ...step, members: left }];
            }
        }
    });
    return { ...stage, steps };
}
