/** What hangers and props carry in a stage. */
import type { HangerActions, PropActions } from './actions.js';
import { combiner, ultimateRules, type Relevant } from './combinations.js';
import type { SolvedStage } from './member-actions.js';
import { cleaned, forceStates } from './reactions.js';
import type { UnitSolution } from './unit-solutions.js';

export function hangerActions(stage: SolvedStage): HangerActions[] {
    const { plan, instant: { mesh } } = stage;
    return mesh.frame.hangers.flatMap(({ hanger }, i) => {
        if (!plan.steps.at(-1)!.standing.hangers[i]) return [];
        const states = statesOf(stage, ({ links }) => links[mesh.hangers[i]!]!).map(({ combination, R }) => ({ combination, N: R }));
        return [{ hanger: hanger.name, stage: plan.name, states, slack: states.some(({ N }) => N < 0) }];
    });
}

export function propActions(stage: SolvedStage): PropActions[] {
    const { plan, instant: { mesh } } = stage;
    return mesh.frame.props.flatMap(({ piece, at }, i) => {
        if (!plan.steps.at(-1)!.standing.props[i] || plan.name === null) return [];
        const states = statesOf(stage, ({ props }) => props[i]!);
        return [{ member: mesh.frame.pieces[piece]!.member.name, at, stage: plan.name, states, slack: states.some(({ R }) => R < 0) }];
    });
}

function statesOf({ units: { cases }, ultimate, parameters, equation }: SolvedStage, force: (solution: UnitSolution) => number): ReturnType<typeof forceStates> {
    const unit = ultimate.map(({ solved: { solutions, scales }, crept }) => ({ units: cleaned(solutions.ofCases.map(force), scales), crept }));
    const relevant: Relevant = ({ id, permanent }) => permanent || unit.some(({ units }) => units[id] !== 0);
    const forces = unit.map(({ units, crept }) => ({ units, combine: combiner(cases, relevant, crept) }));
    return forceStates(cases, forces, ultimateRules(cases, relevant, parameters, equation));
}
