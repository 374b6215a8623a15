import type { Formula } from './model.js';
import type { Quantity } from './quantity.js';
import { combine } from './evaluate/expressions.js';

/**
 * The value of a formula over results; `lookup` gives the result of a subject, of one check or
 * its worst. `instant` and `final` are deflections (mm), every other result a utilisation (1 = 100 %).
 * Undefined where a result is not there, or where something is divided by nought.
 */
export function evaluateFormula(formula: Formula, lookup: (subject: string, check?: string) => Quantity | undefined): Quantity | undefined {
    switch (formula.kind) {
        case 'number': return { value: formula.value, dimension: formula.dimension };
        case 'result': return lookup(formula.subject, formula.check);
        case 'operation': {
            const left = evaluateFormula(formula.left, lookup);
            const right = evaluateFormula(formula.right, lookup);
            const value = left && right && combine(formula.operator, left, right);
            return value !== undefined && Number.isFinite(value.value) ? value : undefined;
        }
    }
}
