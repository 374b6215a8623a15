import { expect } from 'vitest';
import type { CheckResult } from '../../server/src/results.js';
import { inBase, worked } from './formula.js';

/** Each line works out from its own terms, and the last one is the utilisation. */
export function expectExplained(result: CheckResult): void {
    expect(result.steps.at(-1)?.symbol, result.id).toBe('\\eta');
    expect(result.steps.at(-1)?.result.value, result.id).toBeCloseTo(result.utilisation, 9);
    for (const step of result.steps) {
        const what = `${result.id}: ${step.symbol} = ${step.formula}`;
        expect(step.result.value, what).not.toBeNaN();
        const [computed, printed] = [worked(step), inBase(step.result)];
        expect(Math.abs(computed - printed) <= 1e-9 * Math.max(Math.abs(printed), 1e-9), `${what}: ${computed} against ${printed}`).toBe(true);
        for (const { symbol } of step.terms) {
            expect(step.formula, what).toContain(symbol);
        }
    }
}
