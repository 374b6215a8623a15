/** Model → Actions. Members that meet are solved together, others apart. */
import type { Finding, Load, Member, Model } from '../../../language/src/model.js';
import type { Parameters } from '../catalog/parameters.js';
import type { Actions } from './actions.js';
import type { PropertiesOf } from './elastic.js';
import { draftOf, frameOf } from './frame.js';
import { connectedGroups } from './groups.js';
import { hangerProblems } from './join-problems.js';
import { makeAnew, type Recall } from './recall.js';
import type { Problem } from './problems.js';
import { solveGroup, type Group, type GroupActions, type KeptStates } from './solve-group.js';

/**
 * Never throws on bad input: members that cannot be analysed are named in the findings and have no actions.
 * @param states the states to keep at each station: those that may be the worst of a check, or every one that was looked at
 * @param recall gives what was worked out before of the same group by the same parameters
 */
export function analyse(
    model: Model, properties: PropertiesOf, parameters: Parameters,
    { states = 'worst', recall = makeAnew }: { readonly states?: KeptStates; readonly recall?: Recall } = {}
): Actions {
    const byName = new Map<string, Member>();
    for (const member of model.members) if (!byName.has(member.name)) byName.set(member.name, member);
    const loads = new Map<string, Load[]>();
    for (const load of model.loads) {
        const found = loads.get(load.member);
        if (found) found.push(load); else loads.set(load.member, [load]);
    }
    const hangers = model.hangers.map((hanger) => {
        const elastic = properties.hanger(hanger);
        return { hanger, elastic, problems: hangerProblems(hanger, byName, elastic) };
    });
    const propped = new Set(model.stages.flatMap(({ steps }) => steps.flatMap((step) => (step.kind === 'prop' ? [step.member] : []))));

    const outcomes = connectedGroups(model, byName).map((members): GroupActions & { readonly findings: readonly Finding[] } => {
        const own = new Set(members.map(({ name }) => name));
        const hung = hangers.filter(({ hanger }) => own.has(hanger.carries) || own.has(hanger.from));
        const held = new Set([...propped, ...hung.flatMap(({ hanger }) => [hanger.carries, hanger.from])]);
        const drafts = members.map((member) => draftOf({ member, loads: loads.get(member.name) ?? [], byName, properties, stages: model.stages, hung: held.has(member.name) }));
        const problems = [...drafts.flatMap((draft) => draft.problems), ...hung.flatMap((one) => one.problems.filter(({ member }) => members.includes(member)))];
        if (problems.length > 0) return { ...none, findings: findingsOf(members, problems) };
        const pairs = hung.flatMap(({ hanger, elastic }) => (elastic ? [{ hanger, elastic }] : []));
        const { frame, problems: unsound } = frameOf(drafts.flatMap(({ body }) => (body ? [body] : [])), pairs, model.stages, recall);
        const group = { frame, stages: model.stages, equation: model.job.combinations, states };
        const solved = unsound.length === 0 ? solvedGroup(group, parameters, recall) : { ...none, problems: unsound };
        return { ...solved, findings: findingsOf(members, solved.problems) };
    });
    return {
        cases: outcomes.flatMap(({ cases }) => cases),
        members: outcomes.flatMap((outcome) => outcome.members),
        hangers: outcomes.flatMap((outcome) => outcome.hangers),
        props: outcomes.flatMap((outcome) => outcome.props),
        findings: outcomes.flatMap(({ findings }) => findings)
    };
}

/** Problems name the members as they are now: they are found anew. */
function solvedGroup(group: Group, parameters: Parameters, recall: Recall): GroupActions {
    const known = recall(`group ${JSON.stringify(group)}`, () => solveGroup(group, parameters, recall));
    return known.problems.length === 0 ? known : solveGroup(group, parameters, recall);
}

const none: GroupActions = { cases: [], members: [], hangers: [], props: [], problems: [] };

/** What is wrong; and that members joined to unsound ones have no results either. */
function findingsOf(members: readonly Member[], problems: readonly Problem[]): Finding[] {
    const [first] = problems;
    if (!first) return [];
    const joined = members.filter((member) => !problems.some((one) => one.member === member)).map((member): Finding => ({
        severity: 'warning',
        code: 'joined-to-unsound',
        message: `${member.name} has no results: it is joined to ${first.member.name}, which has none`,
        source: member.nameSource,
        related: [{ message: first.finding.message, source: first.finding.source }]
    }));
    return [...problems.map(({ finding }) => finding), ...joined];
}
