/** The worst check of a changed model, with the results of parts that did not change kept from before. */
import type { Model } from '../../../language/src/model.js';
import type { CheckResult, HangerResult, MemberResult, Missing } from '../results.js';
import type { Worst } from './asking.js';
import { partsOf, type Part } from './parts.js';

/** What is needed of the results of a model. */
export interface Outcome {
    readonly checks: readonly Pick<CheckResult, 'id' | 'check' | 'subject' | 'stage' | 'utilisation'>[];
    readonly members: readonly Pick<MemberResult, 'name' | 'stage'>[];
    readonly hangers: readonly Pick<HangerResult, 'name' | 'stage'>[];
    readonly missing: readonly Pick<Missing, 'name' | 'reason'>[];
}

export type Compute = (model: Model) => Outcome;

/**
 * The worst of those parts of the model that differ from the base; of all parts where it is the base itself.
 * Checks that are set aside do not count.
 */
export type WorstOf = (model: Model, aside?: ReadonlySet<string>) => Worst;

/** What has results in the base and none in the changed model counts as worse than any check; what has none in both is left out. */
export function worstFunction(base: Model, compute: Compute): WorstOf {
    const results = remembering(compute);
    const before = partsOf(base);
    const computed = before.flatMap((part) => subjectsIn(results(part)));
    return (model, aside) => {
        const parts = partsOf(model);
        const touched = model === base ? parts : parts.filter((part) => !before.some((other) => same(part, other, identical)));
        return worstIn(touched.map(results), computed.filter(({ name }) => touched.some((part) => isIn(part, name))), aside);
    };
}

interface Subject { readonly name: string; readonly stage: string | null }

const subjectsIn = ({ members, hangers }: Outcome): readonly Subject[] => [...members, ...hangers].map(({ name, stage }) => ({ name, stage }));
const isIn = ({ model }: Part, name: string): boolean => [...model.members, ...model.hangers].some((thing) => thing.name === name);
const inStage = (stage: string | null) => (stage === null ? {} : { stage });

/** @param expected what has results in the base */
function worstIn(outcomes: readonly Outcome[], expected: readonly Subject[], aside: ReadonlySet<string> = new Set()): Worst {
    const subjects = outcomes.flatMap(subjectsIn);
    const missing = outcomes.flatMap((outcome) => outcome.missing);
    const lost = expected.find(({ name, stage }) => !subjects.some((one) => one.name === name && one.stage === stage));
    const without = missing.flatMap(({ name }) => (expected.some((one) => one.name === name) ? [] : [name]));
    const checks = outcomes.flatMap((outcome) => outcome.checks).filter(({ id }) => !aside.has(id)).sort((a, b) => b.utilisation - a.utilisation);
    const failing = [...new Set(checks.filter(({ utilisation }) => utilisation > 1).map(({ id }) => id))];
    if (lost) {
        const reason = missing.find(({ name }) => name === lost.name)?.reason ?? 'it could not be computed';
        return { utilisation: Infinity, check: lost.name, ...inStage(lost.stage), reason, without, failing };
    }
    const [worst] = checks;
    return worst ? { utilisation: worst.utilisation, check: worst.id, ...inStage(worst.stage), without, failing }
        : { utilisation: without.length > 0 ? NaN : 0, check: '', without, failing };
}

/** So many variants of a part are kept: a search comes back to the values that another one of the same input has tried. */
const kept = 32;

/** Results by what a part holds; the parts of a model that were not touched are looked up, not computed. */
export function remembering(compute: Compute): (part: Part) => Outcome {
    const known = new Map<unknown, { readonly part: Part; readonly outcome: Outcome }[]>();
    return (part) => {
        const name = part.model.members[0]?.name ?? part.model.hangers[0]?.name;
        const variants = known.get(name) ?? [];
        const found = variants.find((variant) => same(variant.part, part, equal)) ?? { part, outcome: needed(compute(part.model)) };
        known.set(name, [found, ...variants.filter((variant) => variant !== found)].slice(0, kept));
        return found.outcome;
    };
}

/** The rest of the results is not kept. */
function needed({ checks, members, hangers, missing }: Outcome): Outcome {
    return {
        checks: checks.map(({ id, check, subject, stage, utilisation }) => ({ id, check, subject, stage, utilisation })),
        members: members.map(({ name, stage }) => ({ name, stage })),
        hangers: hangers.map(({ name, stage }) => ({ name, stage })),
        missing
    };
}

function same({ content }: Part, { content: other }: Part, alike: (a: unknown, b: unknown) => boolean): boolean {
    return content.length === other.length && content.every((item, i) => alike(item, other[i]));
}

const identical = (a: unknown, b: unknown): boolean => a === b;
const equal = (a: unknown, b: unknown): boolean => a === b || JSON.stringify(a) === JSON.stringify(b);
