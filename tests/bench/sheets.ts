/** Rendering alone, the results given: the sheet and the preview of the sail loft and of a large floor; and the page that takes them. */
import { fileURLToPath } from 'node:url';
import { evaluateText } from '../../language/src/index.js';
import { calculateFile } from '../../server/src/command/calculate-file.js';
import { compute } from '../../server/src/compute.js';
import type { Results } from '../../server/src/results.js';
import { renderPreview, renderSheet } from '../../server/src/sheet/index.js';
import { floor } from './large.js';
import { report } from './measure.js';

const meta = { sourceHash: '0'.repeat(64), version: '0.0.0', date: '2026-01-01', included: [] };

/** Prints what a sheet and a preview cost; each run has new numbers, as after a keystroke. */
export function sheets(): void {
    const loft = calculateFile(fileURLToPath(new URL('../../samples/sail-loft/sail-loft.padstone', import.meta.url))).results;
    const large = compute(evaluateText(floor(200), 'floor.padstone'));
    const first = timed(() => renderSheet(loft, meta));
    report('sheet of the sail loft, rendered for the first time', [first], 'ms');
    report('sheet of the sail loft, rendered', runs(30, loft, results => renderSheet(results, meta)), 'ms', 50);
    report('preview of the sail loft, rendered', runs(30, loft, renderPreview), 'ms', 50);
    report('sheet of a floor of 200 members, rendered', runs(5, large, results => renderSheet(results, meta)), 'ms', 1000);
    report('preview of a floor of 200 members, rendered', runs(5, large, renderPreview), 'ms', 1000);
}

function runs(times: number, results: Results, render: (results: Results) => unknown): number[] {
    return Array.from({ length: times }, (_, i) => {
        const changed = withOtherNumbers(results, 1 + (i + 1) / 1000);
        return timed(() => render(changed));
    });
}

/** So that nothing of the run before can be used again that a keystroke would not leave. */
function withOtherNumbers(results: Results, factor: number): Results {
    return {
        ...results,
        checks: results.checks.map(check => ({
            ...check,
            steps: check.steps.map(step => ({ ...step, result: { ...step.result, value: step.result.value * factor }, terms: step.terms.map(term => ({ ...term, amount: { ...term.amount, value: term.amount.value * factor } })) }))
        }))
    };
}

function timed(action: () => unknown): number {
    const begun = performance.now();
    action();
    return performance.now() - begun;
}
