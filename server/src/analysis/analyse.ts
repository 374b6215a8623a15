/** Model → Actions. Members that meet are solved together, others apart. */
import type { Finding, Load, Member, Model, Support } from '../../../language/src/model.js';
import type { Parameters } from '../catalog/parameters.js';
import type { Actions } from './actions.js';
import type { PropertiesOf } from './elastic.js';
import { connectedGroups } from './groups.js';
import type { Piece } from './mesh.js';
import { cutProblems, loadProblems, materialProblems, problem, sectionProblems, sizeProblems, stationOnCarrier, supportProblems, type Problem } from './problems.js';
import { segmentsOf } from './segments.js';
import { solveGroup, type GroupActions } from './solve-group.js';

/** Never throws on bad input: members that cannot be analysed are named in the findings and have no actions. */
export function analyse(model: Model, properties: PropertiesOf, parameters: Parameters): Actions {
    const byName = new Map<string, Member>();
    for (const member of model.members) if (!byName.has(member.name)) byName.set(member.name, member);
    const loads = new Map<string, Load[]>();
    for (const load of model.loads) loads.set(load.member, [...loads.get(load.member) ?? [], load]);

    const outcomes = connectedGroups(model.members, byName).map((members): GroupActions & { readonly findings: readonly Finding[] } => {
        const drafts = members.map((member) => draftOf(member, loads.get(member.name) ?? [], byName, properties));
        const problems = drafts.flatMap((draft) => draft.problems);
        const bodies = drafts.flatMap(({ body }) => (body ? [body] : []));
        const solved = problems.length === 0
            ? solveGroup({ pieces: bodies.map((body) => pieceOf(body, bodies)), equation: model.job.combinations }, parameters)
            : { cases: [], members: [], problems };
        return { ...solved, findings: findingsOf(members, solved.problems) };
    });
    return {
        cases: outcomes.flatMap(({ cases }) => cases),
        members: outcomes.flatMap((outcome) => outcome.members),
        findings: outcomes.flatMap(({ findings }) => findings)
    };
}

/** A piece before it is known what rests on it. */
type Body = Omit<Piece, 'bearers' | 'places'>;

function draftOf(
    member: Member, loads: readonly Load[], byName: ReadonlyMap<string, Member>, properties: PropertiesOf
): { readonly body?: Body; readonly problems: readonly Problem[] } {
    if (byName.get(member.name) !== member) {
        return { problems: [problem(member, 'duplicate-name', `${member.name} has no results: another member has its name`, member.nameSource)] };
    }
    const { section } = member;
    const sizes = [...sizeProblems(member), ...cutProblems(member)];
    if (sizes.length > 0 || section.shape !== 'rectangle') return { problems: sizes };
    const elastic = properties(member);
    const { segments, gone } = segmentsOf(member, section);
    const problems = [
        ...materialProblems(member, elastic),
        ...sectionProblems(member, gone),
        ...supportProblems(member, byName),
        ...loadProblems(member, loads)
    ];
    return elastic ? { body: { member, section, elastic, segments, loads }, problems } : { problems };
}

function pieceOf(body: Body, bodies: readonly Body[]): Piece {
    const { member, loads } = body;
    const bearers = bodies.flatMap((other, piece) => other.member.supports.flatMap((support) =>
        bearsOn(other.member, support, member) ? [{ piece, support, at: stationOnCarrier(support, member) ?? NaN }] : []));
    const places = loads.flatMap(({ point, line }) => (point ? [point.at] : line ? [line.from, line.to] : []));
    return { ...body, bearers, places };
}

/** A post's upper supports hold it sideways only: it does not rest there. */
function bearsOn(member: Member, support: Support, carrier: Member): boolean {
    if (support.kind !== 'member' || support.on !== carrier.name) return false;
    return member.kind === 'beam' || member.supports.every(({ at }) => support.at.value <= at.value);
}

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
