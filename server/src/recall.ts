/** Groups of members that were worked out before, by their content: a keystroke that does not touch a group costs it nothing. */
import type { ValueOverride } from '../../language/src/model.js';
import type { Recall } from './analysis/recall.js';
import type { Parameters } from './catalog/parameters.js';
import type { ParameterUse } from './results.js';

interface Known { readonly made: unknown; readonly uses: readonly ParameterUse[] }

/** What the last few jobs were made of, the last one first: what none of them needed is let go. */
const jobs: Map<string, Known>[] = [];
const room = 4;

/** For one job: what it asks for is kept until a few others have been computed. */
export function recallBy(parameters: Parameters, values: readonly ValueOverride[]): Recall {
    const before = JSON.stringify(values.map(({ name, value }) => [name, value]));
    const own = new Map<string, Known>();
    jobs.unshift(own);
    jobs.length = Math.min(jobs.length, room);
    return <T>(content: string, make: () => T): T => {
        const key = before + content;
        const known = jobs.find((job) => job.has(key))?.get(key);
        const found = known ?? parameters.usedBy(make);
        own.set(key, found);
        if (known) parameters.useAgain(known.uses);
        return found.made as T;
    };
}
