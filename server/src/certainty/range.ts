/** How far an input is varied, by its kind. Bounds are common practice, no source, where no other is named. */
import type { Given, Member, Model } from '../../../language/src/model.js';
import { force, length, lineLoad, sameDimension, stress, type Dimension } from '../../../language/src/quantity.js';

export interface Range {
    readonly low: number;
    readonly high: number;
    /** Which way is looked first: the one that is worse as a rule. */
    readonly worse: 'up' | 'down';
    /** So many values to each bound are tried; 1 where more of it never makes any check worse, as of a strength. */
    readonly steps: number;
}

/** In base units; `low` and `high` take in the given value, or are equal where nothing can be varied. */
export function rangeOf(model: Model, given: Given): Range {
    const found = kinds.find(({ is }) => is(given, model))?.range(given, model) ?? around(given, 4, 'down', usual);
    return { ...found, low: Math.min(found.low, given.value), high: Math.max(found.high, given.value) };
}

/** Enough for what gets better and worse once; a support or a load that moves does so more often. */
export const usual = 5;
const many = 12;

interface Kind {
    readonly is: (given: Given, model: Model) => boolean;
    readonly range: (given: Given, model: Model) => Range;
}

const ending = (pattern: RegExp) => ({ path }: Given): boolean => pattern.test(path);

/** From nought to so many times the given value. */
function around({ value }: Given, times: number, worse: Range['worse'], steps: number): Range {
    return { low: Math.min(0, times * value), high: Math.max(0, times * value), worse, steps };
}

function memberOf({ path }: Given, model: Model): Member | undefined {
    return model.members.find(({ name }) => path.startsWith(`${name}.`));
}

const lengthOf = (given: Given, model: Model): number => memberOf(given, model)?.length.value ?? 4 * given.value;

/** The whole of the section across the face. */
function across(given: Given, model: Model): number {
    const section = memberOf(given, model)?.section;
    if (section === undefined || section.shape === 'rolled') return 4 * given.value;
    return /\.(left|right)$/.test(given.path) ? section.breadth.value : section.depth.value;
}

function isStation({ path }: Given, model: Model): boolean {
    return /\.(at|from|to|crossing|butt\d*|splice\d*)$/.test(path) || model.members.some(({ supports }) => supports.some(({ at }) => at.path === path));
}

const amounts: readonly Dimension[] = [force, lineLoad, stress];
const isLoad = ({ path }: Given, model: Model): boolean => model.loads.some(({ amount, strip }) => amount.path === path || strip?.path === path);
const isForce = ({ dimension }: Given): boolean => amounts.some((amount) => dimension !== undefined && sameDimension(amount, dimension));

/** The first that fits. */
const kinds: readonly Kind[] = [
    { is: isLoad, range: (given) => around(given, 10, 'up', usual) },
    { is: ending(/\.(fm_k|ft0_k|ft90_k|fc0_k|fc90_k|fv_k|fy|fu|fk|unit|mortar)$/), range: (given) => around(given, 4, 'down', 1) },
    { is: ending(/\.loss\d*\.(top|bottom|left|right)$|\.notch\d*$|\.hole\d*$/), range: (given, model) => ({ low: 0, high: across(given, model), worse: 'up', steps: usual }) },
    { is: ending(/\.height$/), range: (given, model) => ({ low: -across(given, model) / 2, high: across(given, model) / 2, worse: 'up', steps: usual }) },
    { is: isStation, range: (given, model) => ({ low: 0, high: lengthOf(given, model), worse: 'up', steps: many }) },
    { is: ending(/\.restrained$/), range: (given, model) => ({ low: 0, high: lengthOf(given, model), worse: 'up', steps: usual }) },
    // At most as many bolts as a row may have, and no nearer than a quarter of what is given.
    { is: ending(/\.every$/), range: (given, model) => ({ low: Math.max(given.value / 4, lengthOf(given, model) / 400), high: lengthOf(given, model), worse: 'up', steps: usual }) },
    // Wood holds no more water than about 30 % in its cell walls; what is above it changes no property (from memory).
    { is: ending(/\.moisture$/), range: () => ({ low: 0, high: 0.3, worse: 'up', steps: usual }) },
    { is: ending(/\.length$/), range: (given) => ({ low: given.value / 4, high: 4 * given.value, worse: 'up', steps: usual }) },
    { is: ending(/\.stiffness$/), range: (given) => around(given, 100, 'down', usual) },
    { is: (given) => isForce(given) && !sameDimension(given.dimension ?? length, stress), range: (given) => around(given, 10, 'up', usual) }
];
