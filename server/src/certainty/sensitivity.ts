/** What a guessed grade is worth: the same with a grade one class lower, and with the modulus at its 5 % value for deflections. */
import type { Member, Model, Timber } from '../../../language/src/model.js';
import { stress } from '../../../language/src/quantity.js';
import { finished } from '../finished.js';
import { timberStrength } from '../catalog/timber.js';
import type { Worst } from './asking.js';
import { gradesBelow } from './grades.js';
import { inputOf } from './input.js';
import { isGuess } from './ledger.js';
import { worstFunction, type Compute, type Outcome, type WorstOf } from './worst.js';

export interface Variant {
    /** `C16`, or `E_0,05`. */
    readonly with: string;
    /** The worst check of the members that it has to do with; of their deflections alone for the modulus. */
    readonly worst: Worst;
    /** Holds with the given grade and not with this one. */
    readonly changesVerdict: boolean;
}

export interface Sensitivity {
    /** One that is of it. */
    readonly member: string;
    /** The path of the grade. */
    readonly path: string;
    readonly grade: string;
    readonly given: Worst;
    /** Of deflections. */
    readonly givenDeflection: Worst;
    /** None where the grade is the lowest of its list. */
    readonly lowerClass?: Variant;
    /** E_0,05 for E_0,mean, EN 338 and EN 14080: what one in twenty of the class falls below. */
    readonly lowModulus?: Variant;
}

/** Of each guessed grade of timber, by the first member that is of it. */
export function sensitivities(model: Model, compute: Compute): readonly Sensitivity[] {
    return finished(sensitivitySteps(model, compute, worstFunction(model, compute)));
}

/**
 * Yields the path of the grade before each evaluation of the model.
 * @param worst of the same model and computing, which may know some of it already
 */
export function* sensitivitySteps(model: Model, compute: Compute, worst: WorstOf): Generator<string, readonly Sensitivity[]> {
    const first = new Map(model.members.map(member => [member.material, member] as const).reverse());
    const found: Sensitivity[] = [];
    for (const member of [...first.values()].reverse()) {
        const one = yield* stepsOf(model, member, compute, worst);
        if (one) found.push(one);
    }
    return found;
}

const deflections = new Set(['instant', 'final', 'vibration']);

/** Undefined where the member's grade is no guess, or is not of timber. */
export function sensitivity(model: Model, member: Member, compute: Compute): Sensitivity | undefined {
    return finished(stepsOf(model, member, compute, worstFunction(model, compute)));
}

function* stepsOf(model: Model, member: Member, compute: Compute, worst: WorstOf): Generator<string, Sensitivity | undefined> {
    const declared = model.materials.find(({ name }) => name === member.material);
    const path = `${declared ? declared.name : member.name}.grade`;
    const input = inputOf(model, path);
    const grade = String(input?.given.value);
    const own: Timber = declared?.kind === 'timber' ? declared : { kind: 'timber', name: member.material, properties: {}, source: member.source, grade: input?.given as Timber['grade'] };
    const found = timberStrength(own);
    if (input === undefined || !isGuess(input.given) || 'problem' in found || (declared && declared.kind !== 'timber')) return undefined;
    const worstDeflection = worstFunction(model, (one) => deflectionsOf(compute(one)));
    const same = input.withValue(grade);
    yield path;
    const [given, givenDeflection] = [worst(same), worstDeflection(same)];
    const [below] = gradesBelow(grade);
    if (below !== undefined) yield path;
    const lowerClass = below === undefined ? undefined : variant(below, worst, input.withValue(below), given);
    yield path;
    const lowModulus = variant('E_0,05', worstDeflection, withModulus(model, own, found.strength.E0_05), givenDeflection);
    return {
        member: member.name, path, grade, given, givenDeflection,
        ...(lowerClass && { lowerClass }), lowModulus
    };
}

function variant(name: string, worst: WorstOf, model: Model, given: Worst): Variant {
    const here = worst(model);
    return { with: name, worst: here, changesVerdict: given.utilisation <= 1 && !(here.utilisation <= 1) };
}

function deflectionsOf(outcome: Outcome): Outcome {
    return { ...outcome, checks: outcome.checks.filter(({ check }) => deflections.has(check)) };
}

/** The material with an own mean modulus; a class that a member names directly becomes a material of that name. */
function withModulus(model: Model, timber: Timber, E: number): Model {
    const evidence = timber.grade?.evidence ?? { word: 'assumed', stated: false };
    const E0_mean = { value: E, evidence, source: timber.source, path: `${timber.name}.E0_mean`, dimension: stress };
    const soft: Timber = { ...timber, properties: { ...timber.properties, E0_mean } };
    return { ...model, materials: [...model.materials.filter(({ name }) => name !== timber.name), soft] };
}
