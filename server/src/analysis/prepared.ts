/** All that does not depend on how much a load is: meshes and factored systems of a group, by stiffness. */
import type { Model } from '../../../language/src/model.js';
import { build, type BuiltStage } from './history.js';
import { circleProblems, mechanismProblems } from './mechanisms.js';
import { meshOf, stiffened } from './mesh.js';
import type { Frame } from './piece.js';
import type { Problem } from './problems.js';
import { plansOf, propsOf, type StagePlan } from './stages.js';
import { contentOf, type Recall } from './recall.js';
import { stiffnessRatio } from './stiffness-ratio.js';
import type { StiffnessSet } from './stiffness-sets.js';
import { kitOf, structureOf, type Kit } from './structure.js';

let count = 0;

export interface BuiltSet { readonly kit: Kit; readonly built: readonly BuiltStage[] }

export interface Prepared {
    /** The same for one and the same structure, whatever stands on it. */
    readonly id: number;
    readonly plans: readonly StagePlan[];
    readonly sets: ReadonlyMap<StiffnessSet, BuiltSet>;
    /** By member of leaves: what it is worth in unbroken leaves. */
    readonly ratios: readonly (number | undefined)[];
}

/** Like a group that was prepared before, it is told apart by all but what its loads weigh and where it is written. */
export function prepared(frame: Frame, stages: Model['stages'], recall: Recall): Prepared | { readonly problems: readonly Problem[] } {
    const found = recall(`structure ${contentOf([frame, stages])}`, () => prepare(frame, stages));
    return 'problems' in found ? prepare(frame, stages) : adopted(found, frame);
}

/** With the members as they are now. */
function adopted({ sets, ...others }: Prepared, frame: Frame): Prepared {
    const renewed = [...sets].map(([set, { kit, built }]): [StiffnessSet, BuiltSet] => {
        const pieces = kit.mesh.pieces.map((mesh, i) => ({ ...mesh, piece: frame.pieces[i]! }));
        return [set, { kit: { ...kit, mesh: { ...kit.mesh, frame, pieces } }, built }];
    });
    return { ...others, sets: new Map(renewed) };
}

function prepare(frame: Frame, stages: Model['stages']): Prepared | { readonly problems: readonly Problem[] } {
    const mesh = meshOf(frame, 'instant');
    if (mesh.circles.length > 0) return { problems: circleProblems(mesh) };
    const kit = kitOf(mesh);
    const propSteps = propsOf(stages, (name) => frame.pieces.findIndex(({ member }) => member.name === name)).map(({ step }) => step);
    const plans = plansOf(frame, propSteps, stages, (standing) => structureOf(kit, standing).system.mechanisms.length === 0);
    const built = build(kit, plans);
    const problems = mechanismsOf(kit, built);
    if (problems.length > 0) return { problems };
    const sets = stiffnessSetsOf(frame, stages).map((set): [StiffnessSet, BuiltSet] => [set, set === 'instant' ? { kit, built } : rebuilt(kit, built, set, plans)]);
    return { id: count++, plans, sets: new Map(sets), ratios: frame.pieces.map((piece) => (piece.strands.length > 1 ? stiffnessRatio(piece) : undefined)) };
}

function rebuilt(like: Kit, stages: readonly BuiltStage[], set: StiffnessSet, plans: readonly StagePlan[]): { readonly kit: Kit; readonly built: BuiltStage[] } {
    const kit = kitOf(stiffened(like.mesh, set), like);
    return { kit, built: build(kit, plans, stages) };
}

/** Of the first stage that cannot stand. */
function mechanismsOf({ mesh }: Kit, built: readonly BuiltStage[]): Problem[] {
    for (const { plan, steps } of built) {
        for (const { system, step } of steps) {
            if (system.mechanisms.length > 0) return mechanismProblems(mesh, system.mechanisms, step.standing, plan.name);
        }
    }
    return [];
}

/** Where nothing but one timber shares the load, one stiffness tells all. */
function stiffnessSetsOf({ pieces, hangers }: Frame, stages: Model['stages']): StiffnessSet[] {
    const bolted = pieces.some(({ bolts }) => bolts.length > 0);
    const unlike = pieces.some(({ elastic }) => elastic.section !== undefined || elastic.kdef !== pieces[0]!.elastic.kdef);
    if (bolted) return ['instant', 'final', 'ultimate', 'ultimate final'];
    return hangers.length > 0 || stages.length > 0 || unlike ? ['instant', 'final'] : ['instant'];
}
