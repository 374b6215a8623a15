/** Groups of members that were worked out before, by their content: a keystroke that does not touch a group costs it nothing. */
import type { ValueOverride } from '../../language/src/model.js';
import type { Recall } from './analysis/prepared.js';
import type { Parameters } from './catalog/parameters.js';
import type { ParameterUse } from './results.js';

interface Known { readonly made: unknown; readonly uses: readonly ParameterUse[] }

/** A handful of jobs, each a few groups; the one that was asked for last goes last. */
const room = 24;
/** Characters: what is larger is not kept. */
const largest = 4_000_000;

const memory = new Map<string, Known>();

export function recallBy(parameters: Parameters, values: readonly ValueOverride[]): Recall {
    const before = JSON.stringify(values.map(({ name, value }) => [name, value]));
    return <T>(content: string, make: () => T): T => {
        const key = before + content;
        const known = memory.get(key);
        memory.delete(key);
        const found = known ?? parameters.usedBy(make);
        if (key.length <= largest) memory.set(key, found);
        const [oldest] = memory.keys();
        if (memory.size > room && oldest !== undefined) memory.delete(oldest);
        if (known) parameters.useAgain(known.uses);
        return found.made as T;
    };
}
