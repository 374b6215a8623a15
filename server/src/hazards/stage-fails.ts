import type { HazardRule } from './hazard-rule.js';
import { failingStages } from './failing-stages.js';
import { joined } from './telling.js';

/** What a stage leaves behind holds, or the stage is not to be reached: EN 1990 3.2(2), transient situations (from memory). */
export const stageFails: HazardRule = {
    code: 'stage-fails',
    find: context => failingStages(context)
        .filter(({ last, strength }) => last || strength.length === 0)
        .map(({ stage, failing }) => ({
            severity: 'stop' as const,
            subject: joined(failing.map(({ subject }) => subject)),
            message: `Stage ${stage.name} does not hold: ${joined(failing.map(({ id }) => id))}`,
            action: 'Do not go on to this stage: strengthen what fails, carry it otherwise, or change the order of work.',
            decider: 'structural engineer',
            source: stage.source
        }))
};
