/** EN 1990 combinations as factors on unit cases. */
import { durations, type Duration, type Job } from '../../../language/src/model.js';
import type { Parameters } from '../catalog/parameters.js';
import type { Combination, CombinationKind, UnitCase } from './actions.js';
import { isSet, shortness } from './durations.js';
import { labelOf } from './labels.js';
import { placementKey } from './placement.js';

/**
 * One rule of combination before loads are placed: a factor for all permanent loads (one source), and one for each
 * variable case that takes part, which counts where it is unfavourable.
 */
export interface Rule {
    readonly kind: CombinationKind;
    readonly permanent: number;
    /** Indices of cases and their factors. */
    readonly variable: Int32Array;
    /** One and the same array where rules differ in their permanent loads alone: then they are placed alike. */
    readonly factors: Float64Array;
    /** Factors of the variable cases' share in creep, where it counts; permanent loads have all of theirs. */
    readonly creep?: Float64Array;
}

/**
 * EN 1990 6.4.3.2 (6.10), or (6.10a) and (6.10b), Table A1.2(B): every variable action leading in turn, permanent loads
 * favourable and unfavourable. For each load duration only actions that last at least so long take part, so that each
 * kmod (EN 1995-1-1 3.1.3(2)) is met with its own greatest effect.
 */
export function ultimateRules(cases: readonly UnitCase[], p: Parameters, equation: Job['combinations']): Rule[] {
    const variable = variableOf(cases);
    const rules: Rule[] = [];
    for (const permanent of [p.gammaG, p.gammaGfavourable]) rules.push(rule('ultimate', permanent, [], () => 0));
    for (const duration of durations) {
        if (!variable.some((unit) => unit.duration === duration)) continue;
        const lasting = variable.filter((unit) => shortness(unit.duration) <= shortness(duration));
        const leading = (action: string) => (unit: UnitCase) => p.gammaQ * (unit.action === action ? 1 : unit.psi[0]);
        for (const action of actionsOf(lasting)) {
            const unfavourable = equation === '6.10' ? p.gammaG : p.xi * p.gammaG;
            const leads = rule('ultimate', unfavourable, lasting, leading(action));
            rules.push(leads, { ...leads, permanent: p.gammaGfavourable });
        }
        if (equation === '6.10a/b') rules.push(rule('ultimate', p.gammaG, lasting, (unit) => p.gammaQ * unit.psi[0]));
    }
    return rules;
}

/** EN 1990 6.5.3 (6.14b): each variable action leading in turn. */
export function characteristicRules(cases: readonly UnitCase[]): Rule[] {
    return leadingEach(cases, 'characteristic', (unit, leads) => (leads ? 1 : unit.psi[0]));
}

/** EN 1990 6.5.3 (6.16b), with creep, EN 1995-1-1 2.2.3(3) and (4) (from memory). */
export function quasiPermanentRules(cases: readonly UnitCase[]): Rule[] {
    const plain = rule('quasi-permanent', 1, variableOf(cases), (unit) => unit.psi[2]);
    return [{ ...plain, creep: plain.factors }];
}

/**
 * Instant deflection plus creep by ψ2: of one timber G (1 + kdef), leading Q (1 + ψ2 kdef), other Q (ψ0 + ψ2 kdef).
 * EN 1995-1-1 2.2.3(5), equations (2.3) to (2.5).
 */
export function creepRules(cases: readonly UnitCase[]): Rule[] {
    return characteristicRules(cases).map((plain) => ({
        ...plain, creep: Float64Array.from(plain.variable, (unit) => cases[unit]!.psi[2])
    }));
}

/** EN 1990 6.4.2, Table A1.2(A), the variable side of it: each action leading in turn. */
export function equilibriumRules(cases: readonly UnitCase[], p: Parameters): Rule[] {
    return leadingEach(cases, 'ultimate', (unit, leads) => p.gammaQ * (leads ? 1 : unit.psi[0]));
}

function leadingEach(
    cases: readonly UnitCase[], kind: CombinationKind,
    factor: (unit: UnitCase, leads: boolean) => number
): Rule[] {
    const variable = variableOf(cases);
    if (variable.length === 0) return [rule(kind, 1, [], () => 0)];
    return actionsOf(variable).map((action) => rule(kind, 1, variable, (unit) => factor(unit, unit.action === action)));
}

function variableOf(cases: readonly UnitCase[]): UnitCase[] {
    return cases.filter((unit) => !unit.permanent);
}

function actionsOf(units: readonly UnitCase[]): string[] {
    return [...new Set(units.map((unit) => unit.action))];
}

function rule(kind: CombinationKind, permanent: number, units: readonly UnitCase[], factor: (unit: UnitCase) => number): Rule {
    return { kind, permanent, variable: Int32Array.from(units, (unit) => unit.id), factors: Float64Array.from(units, factor) };
}

/** Gives one and the same combination for one set of factors. */
export type Combine = (rule: Rule, present: Uint8Array) => Combination;

export interface CombinerOptions {
    /** Found on the stiffness that creep leaves. */
    readonly crept: boolean;
    /** All cases of the group, and which of them `cases` are. */
    readonly of: { readonly all: readonly UnitCase[]; readonly ids: readonly number[] };
}

/** `present` says, for each of the rule's variable cases, whether it counts. */
export function combiner(cases: readonly UnitCase[], { crept, of: { all, ids } }: CombinerOptions): Combine {
    const known = new Map<string, Combination>();
    const placed = new Map<Rule, Map<number | string, Combination>>();
    const codes = new Map<number, number>();
    const codeOf = (factor: number): number => {
        if (factor === 0) return 0;
        const code = codes.get(factor) ?? codes.size + 1;
        codes.set(factor, code);
        return code;
    };
    const permanents = cases.filter((unit) => unit.permanent);
    const combine: Combine = (rule, present) => {
        const factors = new Array<number>(all.length).fill(0);
        for (const unit of permanents) factors[ids[unit.id]!] = isSet(unit) ? 1 : rule.permanent;
        let duration: Duration = 'permanent';
        rule.variable.forEach((unit, i) => {
            const factor = rule.factors[i]!;
            if (!present[i] || factor === 0) return;
            factors[ids[unit]!] = factor;
            const own = cases[unit]!.duration;
            if (shortness(own) > shortness(duration)) duration = own;
        });
        const key = rule.kind + String.fromCharCode(...factors.map(codeOf));
        const found = known.get(key);
        if (found) return found;
        let label: string | undefined;
        const combination: Combination = {
            kind: rule.kind, factors, duration,
            get label() { return label ??= labelOf(all, factors) + (crept ? ', after creep' : ''); }
        };
        known.set(key, combination);
        return combination;
    };
    return (rule, present) => {
        let ofRule = placed.get(rule);
        if (!ofRule) placed.set(rule, ofRule = new Map());
        const key = placementKey(present);
        let found = ofRule.get(key);
        if (!found) ofRule.set(key, found = combine(rule, present));
        return found;
    };
}
