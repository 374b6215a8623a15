/** One connected group of members, from its pieces to their actions. Pure: the same group gives the same outcome. */
import type { Job, Model } from '../../../language/src/model.js';
import type { Parameters } from '../catalog/parameters.js';
import type { HangerActions, MemberActions, PropActions, UnitCase } from './actions.js';
import { balanceProblems } from './balance.js';
import { scaleOf } from './effects.js';
import { hangerActions, propActions } from './hung.js';
import { solveUnitCases } from './history.js';
import { memberActions, type SolvedStage, type SolvedStiffness } from './member-actions.js';
import type { Frame } from './piece.js';
import { prepared } from './prepared.js';
import type { Problem } from './problems.js';
import type { Recall } from './recall.js';
import type { StiffnessSet } from './stiffness-sets.js';
import { unitCases, type UnitCases } from './unit-cases.js';

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

export function solveGroup({ frame, stages, equation, states }: Group, parameters: Parameters, recall: Recall): GroupActions {
    const found = prepared(frame, stages, recall);
    if ('problems' in found) return unsolved(found.problems);
    const { id, plans, sets, ratios } = found;
    const units = unitCases(sets.get('instant')!.kit.mesh, plans, parameters);
    const small = sets.size * plans.length * units.parts.length * frame.pieces.length <= mostKept;
    const byStiffness = new Map<StiffnessSet, SolvedStiffness[]>();
    for (const [set, { kit, built }] of sets) {
        const solved = solveUnitCases(kit, built, units, (part, make) => (small ? recall(`part ${set} ${JSON.stringify(part)} ${id}`, make) : make()));
        const unbalanced = solved.flatMap(({ ofCases }, s) => balanceProblems(kit.mesh, ofCases, built[s]!.done.held));
        if (unbalanced.length > 0) return unsolved(unbalanced);
        byStiffness.set(set, solved.map((solutions) => ({ mesh: kit.mesh, solutions, scales: solutions.ofCases.map((one) => scaleOf(kit.mesh, one)) })));
    }
    const solvedStages = plans.map((plan, s): SolvedStage => {
        const at = (set: StiffnessSet): SolvedStiffness | undefined => byStiffness.get(set)?.[s];
        const instant = at('instant')!;
        const final = at('final');
        return {
            plan, units, equation, states, parameters, ratios, instant, final,
            ultimate: [
                { solved: at('ultimate') ?? instant, crept: false },
                ...(final ? [{ solved: at('ultimate final') ?? final, crept: true }] : [])
            ]
        };
    });
    const common = JSON.stringify([frame.pieces.map(({ loads: _, ...piece }) => piece), frame.hangers, stages, equation, states, units.cases, units.parts.map(({ unit, piece }) => [unit, piece])]);
    const done = solvedStages.map((stage, s) => recall(`stage ${s} ${actingIn(units, s)} ${common}`, () => stageActions(stage)));
    return {
        cases: units.cases,
        members: done.flatMap(({ members }) => members),
        hangers: done.flatMap(({ hangers }) => hangers),
        props: done.flatMap(({ props }) => props),
        problems: []
    };
}

/** Parts of small groups are remembered one by one; of large ones that would take more room than it saves. */
const mostKept = 1000;

/** A load that acts in the last stage alone leaves the earlier ones as they were. */
function actingIn({ parts }: UnitCases, stage: number): string {
    return JSON.stringify(parts.filter((part) => part.stages === 'on' || part.stages.includes(stage)));
}

function stageActions(stage: SolvedStage): Pick<GroupActions, 'members' | 'hangers' | 'props'> {
    const { pieces } = standingOf(stage);
    return {
        members: stage.instant.mesh.frame.pieces.flatMap((_, index) => (pieces[index] ? [memberActions(stage, index)] : [])),
        hangers: hangerActions(stage),
        props: propActions(stage)
    };
}

function standingOf({ plan }: SolvedStage) {
    return plan.steps.at(-1)!.standing;
}

function unsolved(problems: readonly Problem[]): GroupActions {
    return { cases: [], members: [], hangers: [], props: [], problems };
}

