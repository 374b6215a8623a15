/** What hangers and props carry in a stage. */
import type { HangerActions, PropActions, UnitCase } from './actions.js';
import { combiner, ultimateRules } from './combinations.js';
import { negligible } from './effects.js';
import type { SolvedStage } from './member-actions.js';
import { cleaned, forceStates, type ForceStates } from './reactions.js';
import type { UnitSolution } from './unit-solutions.js';

export function hangerActions(stage: SolvedStage): HangerActions[] {
    const { plan, instant: { mesh } } = stage;
    return mesh.frame.hangers.flatMap(({ hanger }, i) => {
        if (!plan.steps.at(-1)!.standing.hangers[i]) return [];
        const { states, range } = statesOf(stage, ({ links }) => links[mesh.hangers[i]!]!);
        return [{ hanger: hanger.name, stage: plan.name, states: states.map(({ combination, R }) => ({ combination, N: R })), range, slack: range.min < 0 }];
    });
}

export function propActions(stage: SolvedStage): PropActions[] {
    const { plan, instant: { mesh } } = stage;
    return mesh.frame.props.flatMap(({ piece, at }, i) => {
        if (!plan.steps.at(-1)!.standing.props[i] || plan.name === null) return [];
        const { states, range } = statesOf(stage, ({ props }) => props[i]!);
        return [{ member: mesh.frame.pieces[piece]!.member.name, at, stage: plan.name, states, range, slack: range.min < 0 }];
    });
}

/** Of the cases that act in it, and the permanent ones. */
function statesOf({ units: { cases }, ultimate, parameters, equation, states: kept }: SolvedStage, force: (solution: UnitSolution) => number): ForceStates {
    const unit = ultimate.map(({ solved: { solutions, scales }, crept }) => ({ forces: cleaned(solutions.ofCases.map(force), scales), scales, crept }));
    const acts = ({ id, permanent }: UnitCase): boolean => permanent || unit.some(({ forces, scales }) => Math.abs(forces[id]!) > scales[id]!.force * negligible);
    const ids = cases.filter(acts).map(({ id }) => id);
    const own = ids.map((id, i): UnitCase => ({ ...cases[id]!, id: i }));
    const forces = unit.map((one) => ({
        units: Float64Array.from(ids, (id) => one.forces[id]!), combine: combiner(own, { crept: one.crept, of: { all: cases, ids } })
    }));
    return forceStates(own, forces, ultimateRules(own, parameters, equation), kept);
}
