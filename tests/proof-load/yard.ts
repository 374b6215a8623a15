/** Load tests in plain numbers, and what comes out of them. */
import type { LoadTest, Model } from '../../language/src/model.js';
import { analyse } from '../../server/src/analysis/index.js';
import { propertiesOf } from '../../server/src/assemble/properties.js';
import { subjectsOf } from '../../server/src/assemble/subjects.js';
import { createParameters } from '../../server/src/catalog/parameters.js';
import { loadTestResults } from '../../server/src/proof-load/index.js';
import type { LoadTestResult } from '../../server/src/results.js';
import { given, source } from '../oracle/fixture.js';

export interface TestSketch {
    readonly member?: string;
    readonly leaves?: readonly number[];
    readonly blocks: readonly number[];
    /** kg, mm, mm. */
    readonly weights: readonly (readonly [mass: number, at: number, spread?: number])[];
    /** kg, mm. */
    readonly reads?: readonly (readonly [mass: number, deflection: number])[];
}

function loadTest({ member = 'B1', leaves, blocks, weights, reads = [] }: TestSketch): LoadTest {
    return {
        name: 'yard', member, leaves, blocks: blocks.map(given), source,
        weights: weights.map(([mass, at, spread]) => ({ mass: given(mass), at: given(at), ...spread !== undefined && { spread: given(spread) }, source })),
        readings: reads.map(([mass, deflection]) => ({ mass: given(mass), deflection: given(deflection), source }))
    };
}

/** The tests of a model as its file tells them. */
export function computed(model: Model): readonly LoadTestResult[] {
    const { parameters } = createParameters(model.values);
    const { properties } = propertiesOf(model, subjectsOf(model, parameters).of, parameters);
    return loadTestResults(model, analyse(model, properties, parameters));
}

export function tested(model: Model, sketch: TestSketch): LoadTestResult {
    return computed({ ...model, loadTests: [loadTest(sketch)] })[0]!;
}

/** What the analysis predicts for these weights, mm. */
export const predictedFor = (model: Model, sketch: TestSketch): readonly number[] => tested(model, sketch).points.map(({ predicted }) => predicted.value);
