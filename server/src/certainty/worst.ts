/** The worst check of a changed model, with the results of parts that did not change kept from before. */
import type { Model } from '../../../language/src/model.js';
import type { CheckResult, Missing } from '../results.js';
import type { Worst } from './asking.js';
import { partsOf, type Part } from './parts.js';

/** What is needed of the results of a model. */
export interface Outcome {
    readonly checks: readonly Pick<CheckResult, 'id' | 'check' | 'subject' | 'utilisation'>[];
    readonly missing: readonly Pick<Missing, 'name' | 'reason'>[];
}

export type Compute = (model: Model) => Outcome;

/** The worst of those parts of the model that differ from the base; of all parts where it is the base itself. */
export type WorstOf = (model: Model) => Worst;

/** A thing that has results in the base and none in the changed model counts as worse than any check; one without in both is left out. */
export function worstFunction(base: Model, compute: Compute): WorstOf {
    const results = remembering(compute);
    const before = partsOf(base);
    const without = new Set(before.flatMap((part) => results(part).missing).map(({ name }) => name));
    return (model) => {
        const parts = partsOf(model);
        const touched = parts.filter((part) => !before.some((other) => same(part, other, identical)));
        const outcomes = (model === base ? parts : touched).map(results);
        const missing = outcomes.flatMap((outcome) => outcome.missing);
        const lost = missing.find(({ name }) => !without.has(name));
        const left = missing.flatMap(({ name }) => (without.has(name) ? [name] : []));
        return {
            ...(lost ? { utilisation: Infinity, check: lost.name, reason: lost.reason } : worstCheck(outcomes.flatMap(({ checks }) => checks), left.length > 0)),
            without: left
        };
    };
}

function worstCheck(checks: Outcome['checks'], incomplete: boolean): Pick<Worst, 'utilisation' | 'check'> {
    const [first, ...rest] = checks;
    return first ? rest.reduce((worst, one) => (one.utilisation <= worst.utilisation ? worst : { utilisation: one.utilisation, check: one.id }), { utilisation: first.utilisation, check: first.id })
        : { utilisation: incomplete ? NaN : 0, check: '' };
}

/** So many variants of a part are kept: the given one, and those between which a search goes to and fro. */
const kept = 8;

/** Results by what a part holds; the parts of a model that were not touched are looked up, not computed. */
export function remembering(compute: Compute): (part: Part) => Outcome {
    const known = new Map<unknown, { readonly part: Part; readonly outcome: Outcome }[]>();
    return (part) => {
        const name = part.model.members[0]?.name ?? part.model.hangers[0]?.name;
        const variants = known.get(name) ?? [];
        const found = variants.find((variant) => same(variant.part, part, equal)) ?? { part, outcome: compute(part.model) };
        known.set(name, [found, ...variants.filter((variant) => variant !== found)].slice(0, kept));
        return found.outcome;
    };
}

function same({ content }: Part, { content: other }: Part, alike: (a: unknown, b: unknown) => boolean): boolean {
    return content.length === other.length && content.every((item, i) => alike(item, other[i]));
}

const identical = (a: unknown, b: unknown): boolean => a === b;
const equal = (a: unknown, b: unknown): boolean => a === b || JSON.stringify(a) === JSON.stringify(b);
