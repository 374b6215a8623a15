import { formatQuantity } from '../../../language/src/units.js';
import { force, length, lineLoad } from '../../../language/src/quantity.js';
import type { Load, Model } from '../../../language/src/model.js';
import type { Actions } from '../analysis/actions.js';
import type { LoadResult } from '../results.js';

/** Each load with how it was made up and how it was combined. */
export function loadResults(model: Model, actions: Actions): LoadResult[] {
    return model.loads.map(load => {
        const unitCase = actions.cases.find(candidate => candidate.load === load.name);
        return {
            load,
            duration: unitCase?.duration ?? 'not computed',
            psi: unitCase?.psi ?? [0, 0, 0],
            account: account(load)
        };
    });
}

function account(load: Load): string {
    const amount = load.line && load.strip
        ? `${formatQuantity({ value: load.amount.value, dimension: [-2, 1, 0, 0, 0] }, 'kN/m²')} × ${formatQuantity({ value: load.strip.value, dimension: length }, 'm')} = `
        : '';
    return load.line
        ? `${amount}${formatQuantity({ value: load.line.perLength, dimension: lineLoad }, 'kN/m')}`
        : formatQuantity({ value: load.point?.force ?? 0, dimension: force }, 'kN');
}
