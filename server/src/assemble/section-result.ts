/** What the views draw and say of a member's section. */
import type { PliesSection } from '../../../language/src/model.js';
import type { BoltActions, LeafActions } from '../analysis/actions.js';
import type { BoltResult, LeafResult, MemberResult } from '../results.js';
import { kN, kNm, tidy } from './amounts.js';
import { boltDistances } from '../checks/en1995/leaves/pattern.js';
import type { SubjectContext } from './contexts.js';

type SectionResult = Pick<MemberResult,
    'shape' | 'material' | 'description' | 'breadth' | 'depth' | 'leaves' | 'butts' | 'bolts' | 'distances' | 'stiffnessRatio' | 'plates' | 'rolled'>;

export function sectionResult(context: SubjectContext): SectionResult {
    const { section } = context.member;
    if ('steel' in context) {
        const { section: { name, shape: form, h, b, tw, tf, r }, steel } = context.steel;
        return {
            shape: 'rolled', material: steel.name, description: `${name} ${steel.name}`, breadth: b, depth: h,
            rolled: { designation: name, form, h, b, tw, tf, r }
        };
    }
    const material = context.strength.name;
    switch (section.shape) {
        case 'rectangle': {
            const [breadth, depth] = [section.breadth.value, section.depth.value];
            return { shape: 'rectangle', material, breadth, depth, description: `${tidy(breadth)} × ${tidy(depth)} mm ${material}` };
        }
        case 'plies': return {
            shape: 'plies', material,
            breadth: section.count * section.breadth.value,
            depth: section.depth.value,
            description: `${section.count} of ${tidy(section.breadth.value)} × ${tidy(section.depth.value)} mm ${material}`,
            leaves: context.actions.leaves?.map(leaf => leafResult(leaf, section)),
            butts: section.butts.map(({ leaf, at, source }) => ({ leaf, at: at.value, source })),
            bolts: boltResults(section, context.actions.bolts ?? []),
            distances: boltDistances(context),
            stiffnessRatio: context.actions.stiffnessRatio
        };
        case 'flitch': return {
            shape: 'flitch', material,
            breadth: section.leaves * section.breadth.value + section.plates * section.thickness.value,
            depth: section.depth.value,
            description: `${section.leaves} of ${tidy(section.breadth.value)} × ${tidy(section.depth.value)} mm ${material} with ${section.plates} of ${tidy(section.thickness.value)} × ${tidy(section.plateDepth.value)} mm ${section.steel.value}`,
            bolts: boltResults(section, []),
            distances: boltDistances(context),
            plates: {
                leaves: section.leaves, leafBreadth: section.breadth.value, count: section.plates,
                thickness: section.thickness.value, depth: section.plateDepth.value, steel: section.steel.value
            }
        };
        case 'rolled': throw new Error(`${context.member.name}: a rolled section of timber`);
    }
}

function leafResult({ leaf, pieces, diagrams, moment, shear }: LeafActions, section: PliesSection): LeafResult {
    return {
        leaf, pieces, diagrams,
        breadth: section.breadth.value,
        moment: { min: kNm(moment.min), max: kNm(moment.max) },
        shear: { min: kN(shear.min), max: kN(shear.max) }
    };
}

/** Every hole of the pattern, with the greatest force in each plane. */
function boltResults({ bolts }: Pick<PliesSection, 'bolts'>, actions: readonly BoltActions[]): BoltResult[] {
    return bolts.flatMap(({ size, grade, places }, row) => places.map(({ x, height, source }, place) => ({
        x, height, size, grade: grade.value, source,
        planes: actions.filter(bolt => bolt.row === row && bolt.place === place).map(({ plane, states }) => {
            const { along, across } = states.reduce((most, state) => Math.hypot(state.along, state.across) > Math.hypot(most.along, most.across) ? state : most, { along: 0, across: 0 });
            return { plane, force: kN(Math.hypot(along, across)), angle: Math.atan2(Math.abs(across), Math.abs(along)) * 180 / Math.PI };
        })
    })));
}
