/** How far the member sinks under each weight with any moduli of its timber. */
import type { LoadTest, Member, Model, TestWeight } from '../../../language/src/model.js';
import { benchModel } from './bench.js';
import type { Moduli } from './moduli.js';
import { sagAt, solveUnfactored } from './solve.js';

/** mm of the greatest leaf where the weight stands, below the blocks; NaN where the analysis has nothing. */
export type Sinking = (weight: TestWeight, moduli?: Moduli) => number;

/** All is linear in the load: one analysis for each place of a weight and each pair of moduli. */
export function sinkingOf(model: Model, test: LoadTest, member: Member): Sinking {
    const perKilogram = new Map<string, number>();
    return (weight, moduli) => {
        const key = [weight.at.value, weight.spread?.value, moduli?.E, moduli?.G].join(' ');
        let found = perKilogram.get(key);
        if (found === undefined) {
            const [only] = solveUnfactored(benchModel(model, test, member, weight, { ...moduli && { moduli }, selfWeight: false })).members;
            found = ((only && sagAt(only, weight.at.value)) ?? NaN) / weight.mass.value;
            perKilogram.set(key, found);
        }
        return found * weight.mass.value;
    };
}
