import type { Material, Member, Model } from '../../../language/src/model.js';
import { drilled } from './drilled.js';
import type { HazardRule } from './hazard-rule.js';
import { joined } from './telling.js';

/** Oak, chestnut and their like eat plain steel while they are damp. The language tells no species: hardwood classes (D) and such names count. Common practice, no source. */
export const tanninOnSteel: HazardRule = {
    code: 'tannin-on-steel',
    find: ({ model }) => {
        const holes = new Set([...drilled(model), ...model.hangers.flatMap(({ carries, from }) => [carries, from])]);
        const members = model.members.filter(member => holes.has(member.name) && isTannic(member, model));
        return members.length === 0 ? [] : [{
            severity: 'note',
            subject: joined(members.map(({ name }) => name)),
            message: `Plain steel touches timber that may be rich in tannin: ${joined(members.map(({ material }) => material))}`,
            action: 'Take stainless steel, or galvanised where it stays dry, and look at the bolts again; new plain steel stains and thins in damp oak.',
            decider: 'you',
            source: members[0]!.source
        }];
    }
};

function isTannic({ material }: Member, { materials }: Model): boolean {
    const timber = materials.find((one): one is Extract<Material, { kind: 'timber' }> => one.kind === 'timber' && one.name === material);
    return /^D\d/.test(timber?.grade?.value ?? material) || /oak|chestnut/i.test(material);
}
