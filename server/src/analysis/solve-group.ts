/** One connected group of members, from its pieces to their actions. Pure: the same group gives the same outcome. */
import type { Job, Model } from '../../../language/src/model.js';
import type { Parameters } from '../catalog/parameters.js';
import type { HangerActions, MemberActions, PropActions, UnitCase } from './actions.js';
import { balanceProblems } from './balance.js';
import { scaleOf } from './effects.js';
import { hangerActions, propActions } from './hung.js';
import { build, solveUnitCases, type BuiltStage } from './history.js';
import { circleProblems, mechanismProblems } from './mechanisms.js';
import { memberActions, type SolvedStage, type SolvedStiffness } from './member-actions.js';
import { meshOf, stiffened } from './mesh.js';
import type { Frame } from './piece.js';
import type { Problem } from './problems.js';
import { plansOf, propsOf, type StagePlan } from './stages.js';
import type { StiffnessSet } from './stiffness-sets.js';
import { kitOf, structureOf, type Kit } from './structure.js';
import { unitCases } from './unit-cases.js';

export type KeptStates = 'worst' | 'every';

export interface Group {
    readonly frame: Frame;
    readonly stages: Model['stages'];
    readonly equation: Job['combinations'];
    readonly states: KeptStates;
}

export interface GroupActions {
    readonly cases: readonly UnitCase[];
    readonly members: readonly MemberActions[];
    readonly hangers: readonly HangerActions[];
    readonly props: readonly PropActions[];
    /** Why there are no actions, where there are none. */
    readonly problems: readonly Problem[];
}

export function solveGroup({ frame, stages, equation, states }: Group, parameters: Parameters): GroupActions {
    const mesh = meshOf(frame, 'instant');
    if (mesh.circles.length > 0) return unsolved(circleProblems(mesh));
    const kit = kitOf(mesh);
    const propSteps = propsOf(stages, (name) => frame.pieces.findIndex(({ member }) => member.name === name)).map(({ step }) => step);
    const plans = plansOf(frame, propSteps, stages, (standing) => structureOf(kit, standing).system.mechanisms.length === 0);
    const built = build(kit, plans);
    const loose = mechanismsOf(kit, built);
    if (loose.length > 0) return unsolved(loose);

    const units = unitCases(mesh, plans, parameters);
    const byStiffness = new Map<StiffnessSet, SolvedStiffness[]>();
    for (const set of stiffnessSetsOf(frame, stages)) {
        const own = set === 'instant' ? { kit, built } : rebuilt(kit, built, set, plans);
        const solved = solveUnitCases(own.kit, own.built, units);
        const unbalanced = solved.flatMap(({ ofCases }, s) => balanceProblems(own.kit.mesh, ofCases, own.built[s]!.done.held));
        if (unbalanced.length > 0) return unsolved(unbalanced);
        byStiffness.set(set, solved.map((solutions) => ({ mesh: own.kit.mesh, solutions, scales: solutions.ofCases.map((one) => scaleOf(own.kit.mesh, one)) })));
    }
    const solvedStages = plans.map((plan, s): SolvedStage => {
        const at = (set: StiffnessSet): SolvedStiffness | undefined => byStiffness.get(set)?.[s];
        const instant = at('instant')!;
        const final = at('final');
        return {
            plan, units, equation, states, parameters, instant, final,
            ultimate: [
                { solved: at('ultimate') ?? instant, crept: false },
                ...(final ? [{ solved: at('ultimate final') ?? final, crept: true }] : [])
            ]
        };
    });
    return {
        cases: units.cases,
        members: solvedStages.flatMap((stage) => frame.pieces.flatMap((_, index) => (standingOf(stage).pieces[index] ? [memberActions(stage, index)] : []))),
        hangers: solvedStages.flatMap(hangerActions),
        props: solvedStages.flatMap(propActions),
        problems: []
    };
}

function standingOf({ plan }: SolvedStage) {
    return plan.steps.at(-1)!.standing;
}

function unsolved(problems: readonly Problem[]): GroupActions {
    return { cases: [], members: [], hangers: [], props: [], problems };
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
