import type { Model } from '../../../language/src/model.js';
import type { HazardRule } from './hazard-rule.js';
import { joined } from './telling.js';

/** Old iron in touch with new steel, where it is damp. Of metals the file knows only steel by grade or by its own values. Common practice, no source. */
export const dissimilarMetals: HazardRule = {
    code: 'dissimilar-metals',
    find: ({ model }) => {
        const hung = model.hangers.flatMap(({ carries, from }) => [carries, from]);
        const old = model.job.serviceClass === 1 ? [] : model.members.filter(({ name, material, splices }) =>
            isOldIron(material, model) && (splices.length > 0 || hung.includes(name)));
        return old.length === 0 ? [] : [{
            severity: 'note',
            subject: joined(old.map(({ name }) => name)),
            message: `New steel is fixed to old iron where it may be damp: ${joined(old.map(({ name }) => name))}`,
            action: 'Keep the two apart by washers and sleeves that insulate, paint both, and look at them again.',
            decider: 'you',
            source: old[0]!.source
        }];
    }
};

function isOldIron(material: string, { materials }: Model): boolean {
    const steel = materials.find(({ name }) => name === material);
    return steel?.kind === 'steel' && steel.grade === undefined;
}
