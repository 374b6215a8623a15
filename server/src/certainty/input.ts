/** One input of a model, and the model with another value in its place. */
import type { Given, Member, Model } from '../../../language/src/model.js';
import { classProperty } from './class-property.js';
import { follow } from './follow.js';

export interface Input {
    readonly given: Given<number | string>;
    /** The model as the text would give it with this value there, in base units; the sources stay as they are. */
    readonly withValue: (value: number | string) => Model;
}

/** Undefined where no input has this path, or none that can be varied by itself, such as the words of a section. */
export function inputOf(model: Model, path: string): Input | undefined {
    return givenInput(model, path) ?? classProperty(model, path) ?? gradeOfMember(model, path);
}

/** The model with one input changed; the same model where there is no such input. */
export function withInput(model: Model, path: string, value: number | string): Model {
    return inputOf(model, path)?.withValue(value) ?? model;
}

type Plain = Readonly<Record<string, unknown>>;
type Keys = readonly string[];

const isPlain = (thing: unknown): thing is Plain => typeof thing === 'object' && thing !== null;
const isGiven = (thing: Plain): boolean => 'path' in thing && 'value' in thing && 'evidence' in thing;
const withoutInputs = new Set(['job', 'values', 'requirements', 'breakEvens', 'loadTests', 'options', 'answers', 'survey', 'notComputed', 'source', 'nameSource', 'usedAt', 'evidence']);

function givenInput(model: Model, path: string): Input | undefined {
    const places = placesOf(model, path);
    const first = places.find(([root]) => root !== 'inputs');
    if (first === undefined) return undefined;
    const given = first.reduce<unknown>((thing, key) => (thing as Plain)[key], model) as Given<number | string>;
    return {
        given,
        withValue: (value) => follow(model, places.reduce((changed, place) => replaced(changed, place, value) as Model, model))
    };
}

/** Where in the plain data the inputs of this path stand. */
function placesOf(thing: unknown, path: string): Keys[] {
    if (!isPlain(thing)) return [];
    if (isGiven(thing)) return thing.path === path ? [[]] : [];
    return Object.keys(thing).filter((key) => !withoutInputs.has(key))
        .flatMap((key) => placesOf(thing[key], path).map((place) => [key, ...place]));
}

/** With the value of the input there; what is known for certain has no band. */
function replaced(thing: unknown, [key, ...rest]: Keys, value: number | string): unknown {
    if (key === undefined) {
        const { band: _, ...given } = thing as Plain;
        return { ...given, value };
    }
    const inner = replaced((thing as Plain)[key], rest, value);
    return Array.isArray(thing) ? thing.map((item: unknown, i) => (String(i) === key ? inner : item)) : { ...(thing as Plain), [key]: inner };
}

/** A class that a member is of directly is the name of its material. */
function gradeOfMember(model: Model, path: string): Input | undefined {
    const given = model.inputs.find((input) => input.path === path);
    const member = model.members.find(({ name }) => path === `${name}.grade`);
    return given && member && {
        given,
        withValue: (value) => ({
            ...model,
            members: changed(model.members, member, (one): Member => ({ ...one, material: String(value) })),
            inputs: changed(model.inputs, given, (one) => ({ ...one, value }))
        })
    };
}

function changed<T>(list: readonly T[], item: T, change: (item: T) => T): readonly T[] {
    return list.map((one) => (one === item ? change(one) : one));
}
