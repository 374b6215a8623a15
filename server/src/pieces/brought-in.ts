/** What has to be carried to its place, and what stands there already. */
import type { Model } from '../../../language/src/model.js';

/**
 * In which stage each member or hanger is brought in. What no stage adds is there from the first, and what the first stage
 * adds is what was found; neither is carried. A file without stages does not say, and all of it counts as carried in.
 */
export function broughtIn({ stages, members, hangers }: Pick<Model, 'stages' | 'members' | 'hangers'>): ReadonlyMap<string, string | null> {
    if (stages.length === 0) {
        return new Map([...members, ...hangers].map(({ name }) => [name, null]));
    }
    const [, ...later] = stages;
    const found = new Set(stages[0]!.steps.flatMap(step => step.kind === 'add' ? step.elements : []));
    const added = later.flatMap(({ name, steps }) => steps.flatMap(step => step.kind === 'add' ? step.elements.map(element => [element, name] as const) : []));
    return new Map(added.reverse().filter(([element]) => !found.has(element)));
}
