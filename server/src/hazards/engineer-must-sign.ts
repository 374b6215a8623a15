import type { HazardRule } from './hazard-rule.js';
import { joined } from './telling.js';

/** Who may change what carries a building is set by local law. Said always where the file tells of such a change. */
export const engineerMustSign: HazardRule = {
    code: 'engineer-must-sign',
    find: ({ model }) => {
        const [, ...later] = model.stages;
        const worked = later.flatMap(({ steps }) => steps.flatMap(step => (step.kind === 'add' || step.kind === 'remove' ? step.elements : [])));
        const hung = model.hangers.flatMap(({ carries, from }) => [carries, from]);
        const changed = model.members.filter(({ name }) => worked.includes(name) || hung.includes(name));
        return changed.length === 0 ? [] : [{
            severity: 'note',
            subject: joined(changed.map(({ name }) => name)),
            message: `What carries the building is changed: ${joined(changed.map(({ name }) => name))}`,
            action: 'Have this calculation, and the work before it is closed up, checked and signed by whoever local law asks for.',
            decider: 'structural engineer',
            source: changed[0]!.nameSource
        }];
    }
};
