/** Model → Actions. Members that meet are solved together, others apart. */
import type { Finding, Load, Member, Model, Support } from '../../../language/src/model.js';
import type { Parameters } from '../catalog/parameters.js';
import type { Actions } from './actions.js';
import type { ElasticProperties, PropertiesOf } from './elastic.js';
import type { Piece } from './mesh.js';
import { loadProblems, materialProblems, sectionProblems, sizeProblems, stationOnCarrier, supportProblems } from './problems.js';
import { segmentsOf, type Segments } from './segments.js';
import { solveGroup, type Group } from './solve-group.js';
import { spansOf } from './spans.js';
import { stretchesOf } from './unit-cases.js';

/** Never throws on bad input: members that cannot be analysed are named in the findings and have no actions. */
export function analyse(model: Model, properties: PropertiesOf, parameters: Parameters): Actions {
    const outcomes = connectedGroups(model.members).map((members) => {
        const { group, findings } = groupOf(members, model, properties);
        const solved = group ? solveGroup(group, parameters) : { cases: [], members: [], findings };
        const actions = solved.members.length > 0 ? solved : { ...solved, findings: withFollowers(members, solved.findings) };
        return actions;
    });
    return {
        cases: outcomes.flatMap(({ cases }) => cases),
        members: outcomes.flatMap(({ members }) => members),
        findings: outcomes.flatMap(({ findings }) => findings)
    };
}

/** Members joined by resting on each other, in the order of the file. */
export function connectedGroups(members: readonly Member[]): Member[][] {
    const group = new Map<Member, Member[]>(members.map((member) => [member, [member]]));
    for (const member of members) {
        for (const support of member.supports) {
            const carrier = support.kind === 'member' ? members.find(({ name }) => name === support.on) : undefined;
            if (!carrier || group.get(carrier) === group.get(member)) continue;
            const joined = [...group.get(member)!, ...group.get(carrier)!];
            for (const one of joined) group.set(one, joined);
        }
    }
    const unique = [...new Set(group.values())];
    return unique.map((list) => members.filter((member) => list.includes(member)));
}

interface Sound { readonly elastic: ElasticProperties; readonly segments: Segments }

function groupOf(members: readonly Member[], model: Model, properties: PropertiesOf): { readonly group?: Group; readonly findings: Finding[] } {
    const findings: Finding[] = [];
    const sound = new Map<Member, Sound>();
    const loads = model.loads.filter((load) => members.some(({ name }) => name === load.member));
    for (const member of members) {
        const sizes = sizeProblems(member);
        findings.push(...sizes);
        if (sizes.length > 0 || member.section.shape !== 'rectangle') continue;
        const elastic = properties(member);
        const segments = segmentsOf(member, member.section, 1e-5 * member.length.value);
        const problems = [
            ...materialProblems(member, elastic),
            ...sectionProblems(member, segments),
            ...supportProblems(member, model),
            ...loadProblems(member, loads.filter((load) => load.member === member.name))
        ];
        findings.push(...problems);
        if (elastic && problems.length === 0) sound.set(member, { elastic, segments });
    }
    if (findings.length > 0) return { findings };
    const pieces = members.map((member) => pieceOf(member, members, sound.get(member)!, loads));
    return { group: { pieces, loads, equation: model.job.combinations }, findings };
}

function pieceOf(member: Member, members: readonly Member[], { elastic, segments }: Sound, loads: readonly Load[]): Piece {
    const bearers = members.flatMap((other, piece) => other.supports.flatMap((support) =>
        bearsOn(other, support, member) ? [{ piece, support, at: stationOnCarrier(support, member)! }] : []));
    const heads = member.kind === 'post' ? bearers.map(({ at }) => at) : [];
    const ends = stretchesOf(member, spansOf(member, heads)).flatMap(({ from, to }) => [from, to]);
    const places = loads.filter((load) => load.member === member.name).flatMap(({ point, line }) =>
        point ? [point.at] : line ? [line.from, line.to] : []);
    if (member.section.shape !== 'rectangle') throw new Error('sizeProblems lets only rectangles pass');
    return { member, section: member.section, elastic, segments: segments.segments, loadPlaces: [...ends, ...places], bearers };
}

/** A post's upper supports hold it sideways only: nothing rests there. */
function bearsOn(member: Member, support: Support, carrier: Member): boolean {
    if (support.kind !== 'member' || support.on !== carrier.name) return false;
    return member.kind === 'beam' || member.supports.every(({ at }) => support.at.value <= at.value);
}

/** Members that are sound themselves but have no results because they are joined to one that is not. */
function withFollowers(members: readonly Member[], findings: readonly Finding[]): Finding[] {
    const culprits = members.filter((member) => findings.some(({ message }) => message.startsWith(`${member.name} `)));
    const first = findings[0];
    if (!first) return [];
    const followers = members.filter((member) => !culprits.includes(member)).map((member): Finding => ({
        severity: 'warning',
        code: 'joined-to-unsound',
        message: `${member.name} has no results: it is joined to ${culprits[0]?.name ?? 'a member'} that has none`,
        source: member.nameSource,
        related: [{ message: first.message, source: first.source }]
    }));
    return [...findings, ...followers];
}
