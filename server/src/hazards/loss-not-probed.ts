import type { HazardRule } from './hazard-rule.js';
import { metres } from './telling.js';

const found = new Set(['probed', 'measured', 'tested']);

/** The depth of a loss is what the whole calculation hangs on. Common practice, no source. */
export const lossNotProbed: HazardRule = {
    code: 'loss-not-probed',
    find: ({ model }) => model.members.flatMap(member => member.losses
        .filter(loss => Object.values(loss.faces).some(face => !found.has(face.evidence.word)))
        .map(loss => ({
            severity: 'warn' as const,
            subject: member.name,
            message: `The loss of ${member.name} from ${metres(loss.from.value)} to ${metres(loss.to.value)} was not probed`,
            action: 'Prop the timber, then probe or drill at 100 mm centres until firm wood is met on every face, and write (probed "…").',
            decider: 'you',
            source: loss.source
        })))
};
