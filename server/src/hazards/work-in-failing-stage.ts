import type { HazardRule } from './hazard-rule.js';
import { failingStages } from './failing-stages.js';
import { joined } from './telling.js';

/** Whoever makes the next stage stands on and under what this one leaves. EN 1990 3.2(2), transient situations (from memory). */
export const workInFailingStage: HazardRule = {
    code: 'work-in-failing-stage',
    find: context => failingStages(context)
        .filter(({ last, strength }) => !last && strength.length > 0)
        .map(({ stage, strength, next }) => ({
            severity: 'stop' as const,
            subject: joined(strength.map(({ subject }) => subject)),
            message: `People are to make stage ${next} on and under what does not hold in stage ${stage.name}: ${joined(strength.map(({ id }) => id))}`,
            action: 'Keep everybody off and from under it; take its load away or prop it from outside first, and show that as a stage that holds.',
            decider: 'structural engineer',
            source: stage.source
        }))
};
