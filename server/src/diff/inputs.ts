/** What went in otherwise. Neither white space nor the order of declarations is a change. */
import type { Model, StageStep } from '../../../language/src/model.js';
import type { ElementChange, InputChange } from './comparison.js';
import { inWords, isLeaf, isPart, keyInWords, keysOf, same, type Part } from './words.js';

export function changedInputs(before: Model | undefined, after: Model | undefined): ElementChange[] {
    const [old, now] = [elementsOf(before), elementsOf(after)];
    return [...new Set([...now.keys(), ...old.keys()])].flatMap(element => {
        const [one, other] = [old.get(element), now.get(element)];
        const changes = one === undefined || other === undefined ? [{ what: '', before: said(one), after: said(other) }] : changesIn(one, other);
        return changes.length > 0 ? [{ element, changes }] : [];
    });
}

/** Each thing that a file declares, by what it is called. */
function elementsOf(model: Model | undefined): ReadonlyMap<string, unknown> {
    if (model === undefined) {
        return new Map();
    }
    const called = <T extends { readonly name: string }>(kind: string | ((item: T) => string), items: readonly T[]) =>
        items.map(item => [`${typeof kind === 'string' ? kind : kind(item)} ${item.name}`, item] as const);
    return new Map<string, unknown>([
        ['job', model.job],
        ...called('value', model.values),
        ...model.access ? [['access', model.access] as const] : [],
        ...(model.survey?.items ?? []).map(({ subject, state, note }) => [`survey ${subject}`, note ? `${state} "${note}"` : state] as const),
        ...called(({ kind }) => kind, model.materials),
        ...called('wall', model.walls),
        ...called('member', model.members),
        ...called('hanger', model.hangers),
        ...called('load', model.loads),
        ...model.stages.map(({ name, title, steps }) => [`stage ${name}`, { title, steps: steps.map(stepInWords) }] as const),
        ...model.stages.length > 1 ? [['order of stages', model.stages.map(({ name }) => name).join(', ')] as const] : [],
        ...model.requirements.map(({ text }) => [`require ${text.replace(/\s/g, '')}`, text] as const),
        ...model.breakEvens.map(({ path }) => [`breakeven ${path}`, path] as const),
        ...called('load test', model.loadTests),
        ...model.options.flatMap(({ name, replaced }) => called(`option ${name}:`, replaced)),
        ...model.answers.map(({ hazard, subject, what, evidence }) => [`answer ${subject === undefined ? hazard : `${hazard} on ${subject}`}`, { what, evidence }] as const),
        ...model.notComputed.map(({ what, why }) => [`not computed: ${what}`, why] as const)
    ]);
}

/** In one step it does not matter which element is named first. */
function stepInWords({ source: _source, ...step }: StageStep): string {
    const names = 'elements' in step ? step.elements : 'hangers' in step ? step.hangers : 'members' in step && step.members !== 'all' ? step.members : [];
    const sorted = [...names].sort().join(', ');
    switch (step.kind) {
        case 'prop': return `prop ${step.member} at ${inWords(step.at)}, lift ${inWords(step.lift)}`;
        case 'tighten': return `tighten ${sorted} to ${inWords(step.force)}`;
        case 'release': return `release ${step.members === 'all' ? 'props' : sorted}`;
        default: return `${step.kind} ${sorted}`;
    }
}

function changesIn(before: unknown, after: unknown, what = ''): InputChange[] {
    if (same(before, after)) {
        return [];
    }
    if (isLeaf(before) || isLeaf(after) || Array.isArray(before) !== Array.isArray(after)) {
        return [{ what, before: said(before, what), after: said(after, what) }];
    }
    const within = (key: string) => [what, key].filter(word => word !== '').join(' ');
    if (Array.isArray(before) && Array.isArray(after)) {
        return pairs(before as Part[], after as Part[]).flatMap(({ one, other, label }) => changesIn(one, other, within(label)));
    }
    const [one, other] = [before as Part, after as Part];
    return [...new Set([...keysOf(one), ...keysOf(other)])].flatMap(key => changesIn(one[key], other[key], within(keyInWords(key))));
}

const said = (value: unknown, what?: string): string | undefined => value === undefined ? undefined : inWords(value, what);

interface Pair { readonly one?: Part; readonly other?: Part; readonly label: string }

/** Parts of a list that are the same are left out, wherever they stand; the others are set against those of the same label, in turn. */
function pairs(before: readonly Part[], after: readonly Part[]): Pair[] {
    const left = [...after];
    const changed = before.filter(item => {
        const at = left.findIndex(other => same(item, other));
        return at < 0 || (left.splice(at, 1), false);
    });
    const rest = [...left];
    const found = changed.map(one => {
        const at = rest.findIndex(other => labelOf(other) === labelOf(one));
        return { one, other: at < 0 ? undefined : rest.splice(at, 1)[0], label: labelOf(one) };
    });
    return [...found, ...rest.map(other => ({ other, label: labelOf(other) }))];
}

/** The wall, the leaf, the face or the size that tells one part of a list from the next. */
function labelOf(part: Part): string {
    const key = ['on', 'leaf', 'face', 'where', 'size', 'name'].find(one => part[one] !== undefined);
    return key === undefined || isPart(part[key]) ? '' : key === 'leaf' ? `leaf ${String(part[key])}` : String(part[key]);
}
