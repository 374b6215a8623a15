import type { Masonry } from '../../../language/src/model.js';
import { masonryStrength } from '../catalog/masonry.js';
import type { HazardRule } from './hazard-rule.js';
import { joined } from './telling.js';

/** MPa: rubble in earth or lime mortar lies about here. Common practice, no source. */
const weak = 1;

/** A beam's end on masonry that nobody has tried, or that is known to be weak. Common practice, no source. */
export const bearingOnWeakMasonry: HazardRule = {
    code: 'bearing-on-weak-masonry',
    find: ({ model }) => model.materials.flatMap(material => {
        const why = material.kind === 'masonry' ? whyDoubtful(material) : undefined;
        const walls = model.walls.filter(wall => wall.material === material.name).map(({ name }) => name);
        const borne = model.members.filter(({ supports }) => supports.some(({ kind, on }) => kind === 'wall' && walls.includes(on))).map(({ name }) => name);
        return why === undefined || borne.length === 0 ? [] : [{
            severity: 'warn' as const,
            subject: material.name,
            message: `The strength of ${material.name}, on which ${joined(borne)} bear${borne.length === 1 ? 's' : ''}, ${why}`,
            action: 'Open the wall at the bearing, see its bond, voids and mortar, and set the end on a padstone where it is poor.',
            decider: 'structural engineer',
            source: material.source
        }];
    })
};

function whyDoubtful(masonry: Masonry): string | undefined {
    const { fk, unit } = masonry;
    const strength = masonryStrength(masonry);
    const given = fk ? [fk] : unit ? [unit.strength, unit.mortar] : [];
    return strength !== undefined && strength < weak ? `is only ${strength.toFixed(2)} MPa`
        : given.some(({ evidence }) => evidence.word === 'assumed') ? 'is only assumed' : undefined;
}
