import type { Model, StageStep } from '../../../language/src/model.js';
import type { Actions } from '../analysis/actions.js';
import type { HazardRule } from './hazard-rule.js';
import { kilonewtons } from './telling.js';

/** N: what is less than a hand's push is no load. */
const noticed = 100;

type Remove = Extract<StageStep, { kind: 'remove' }>;

/** What is cut or taken out while it carries lets go at once. Common practice, no source. */
export const removedBeforeRelief: HazardRule = {
    code: 'removed-before-relief',
    find: ({ model, actions }) => model.stages.flatMap((stage, i) => stage.steps.flatMap(step => (step.kind === 'remove' ? step.elements.flatMap(name => {
        const carried = carriedBy(name, model, actions, model.stages[i - 1]?.name);
        return carried.length === 0 ? [] : [hazard(name, stage.name, carried, step)];
    }) : [])))
};

function hazard(name: string, stage: string, carried: readonly string[], { source }: Remove) {
    return {
        severity: 'stop' as const,
        subject: name,
        message: `${name} is taken out in stage ${stage} while it still carries ${carried.join(', ')}`,
        action: 'Hang, prop or move what it carries first, in a stage of its own; neither cut nor loosen it before the sheet shows it relieved.',
        decider: 'structural engineer',
        source
    };
}

/** All that stands on an element, or hangs from it, at the end of the stage before it goes; its own weight is not counted. */
function carriedBy(name: string, model: Model, actions: Actions, before: string | undefined): readonly string[] {
    const pulls = (actions.hangers ?? []).filter(({ stage }) => stage === before).map(({ hanger, states }) => ({ hanger, N: Math.max(...states.map(({ N }) => N)) }));
    const own = pulls.filter(({ hanger, N }) => hanger === name && N > noticed).map(({ N }) => `a pull of ${kilonewtons(N)}`);
    const loads = model.loads.filter(({ member, action }) => member === name && action.kind === 'permanent').map(load => load.name);
    const hung = pulls.filter(({ hanger, N }) => N > noticed && model.hangers.some(one => one.name === hanger && one.from === name)).map(({ hanger, N }) => `${hanger} with ${kilonewtons(N)}`);
    const crossings = actions.members.filter(({ member, stage }) => member === name && stage === before).flatMap(member => member.crossings)
        .filter(({ design }) => design.max > noticed).map(({ support, design }) => `${support} with ${kilonewtons(design.max)}`);
    return [...new Set([...own, ...loads, ...hung, ...crossings])];
}
