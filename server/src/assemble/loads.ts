import { formatQuantity } from '../../../language/src/units.js';
import { force, length, lineLoad, type Dimension } from '../../../language/src/quantity.js';
import type { Given, Load, Model } from '../../../language/src/model.js';
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

/** `0.50 kN/m² × 2.20 m = 1.10 kN/m`; of bands from low to high. */
function account(load: Load): string {
    const { amount, strip, line, point } = load;
    const areaLoad = line && strip;
    const sides = areaLoad ? `${inUnit(amount, [-2, 1, 0, 0, 0], 'kN/m²')} × ${inUnit(strip, length, 'm')} = ` : '';
    const low = lowOf(amount) * (areaLoad ? lowOf(strip) : 1);
    const high = highOf(amount) * (areaLoad ? highOf(strip) : 1);
    const made = low === high ? [line ? line.perLength : point?.force ?? 0] : [low, high];
    return sides + made.map(value => line ? formatQuantity({ value, dimension: lineLoad }, 'kN/m') : formatQuantity({ value, dimension: force }, 'kN')).join(' .. ');
}

const lowOf = ({ band, value }: Given): number => band?.low ?? value;
const highOf = ({ band, value }: Given): number => band?.high ?? value;

function inUnit({ value, band }: Given, dimension: Dimension, unit: string): string {
    return (band ? [band.low, band.high] : [value]).map(one => formatQuantity({ value: one, dimension }, unit)).join(' .. ');
}
