/** From the members of a connected group to the frame that is solved. */
import type { Hanger, Load, Member, Model, Support } from '../../../language/src/model.js';
import type { HangerElasticity, PropertiesOf } from './elastic.js';
import { jointProblems, leafLoadProblems, propProblems } from './join-problems.js';
import { withoutLoose, type Held } from './loose.js';
import { contentOf, type Recall } from './recall.js';
import type { Frame, Piece } from './piece.js';
import { cutProblems, loadProblems, materialProblems, problem, sectionProblems, sizeProblems, stationOnCarrier, supportProblems, type Problem } from './problems.js';
import { propsOf } from './stages.js';
import { boltsOf, strandsOf } from './strands.js';

/** A piece before it is known what rests on it or hangs from it. */
export type Body = Omit<Piece, 'bearers' | 'places' | 'levels'>;

export interface DraftInput {
    readonly member: Member;
    readonly loads: readonly Load[];
    readonly byName: ReadonlyMap<string, Member>;
    readonly properties: PropertiesOf;
    readonly stages: Model['stages'];
    /** Hangers or props may hold it. */
    readonly hung: boolean;
}

export function draftOf({ member, loads, byName, properties, stages, hung }: DraftInput): { readonly body?: Body; readonly problems: readonly Problem[] } {
    if (byName.get(member.name) !== member) {
        return { problems: [problem(member, 'duplicate-name', `${member.name} has no results: another member has its name`, member.nameSource)] };
    }
    const sizes = [...sizeProblems(member), ...cutProblems(member)];
    if (sizes.length > 0) return { problems: sizes };
    const elastic = properties.member(member);
    const material = materialProblems(member, elastic);
    if (!elastic || material.length > 0) return { problems: [...material, ...supportProblems(member, byName, hung), ...loadProblems(member, loads)] };
    const { strands, gone } = strandsOf(member, elastic);
    const bolts = boltsOf(member, elastic);
    const problems = [
        ...material,
        ...sectionProblems(member, gone),
        ...supportProblems(member, byName, hung),
        ...loadProblems(member, loads),
        ...jointProblems(member, bolts, strands),
        ...propProblems(member, stages)
    ];
    return { body: { member, elastic, strands, bolts, loads }, problems };
}

interface Pair { readonly hanger: Hanger; readonly elastic: HangerElasticity }

export function frameOf(bodies: readonly Body[], pairs: readonly Pair[], stages: Model['stages'], recall: Recall): { readonly frame: Frame; readonly problems: readonly Problem[] } {
    const index = new Map(bodies.map(({ member }, i) => [member.name, i]));
    const indexOf = (name: string): number => index.get(name) ?? -1;
    const hangers = pairs.map(({ hanger, elastic }) => ({ hanger, elastic, lower: indexOf(hanger.carries), upper: indexOf(hanger.from) }));
    const props = propsOf(stages, indexOf).map(({ piece, at }) => ({ piece, at }));
    const bearers = bodies.map((): Piece['bearers'][number][] => []);
    bodies.forEach(({ member }, piece) => {
        for (const support of member.supports) {
            const carrier = indexOf(support.on);
            if (bearsOn(member, support) && carrier >= 0) bearers[carrier]!.push({ piece, support, at: stationOnCarrier(support, bodies[carrier]!.member) ?? NaN });
        }
    });
    const levels = bodies.map((): number[] => []);
    for (const { hanger, lower, upper } of hangers) {
        levels[lower]!.push(hanger.carriesAt.value);
        levels[upper]!.push(hanger.fromAt.value);
    }
    for (const { piece, at } of props) levels[piece]!.push(at);
    const held = bodies.map((body, i) => withoutKnownLoose({
        ...body, bearers: bearers[i]!, levels: levels[i]!,
        places: [...levels[i]!, ...body.loads.flatMap(({ point, line }) => (point ? [point.at] : line ? [line.from, line.to] : []))]
    }, recall));
    const problems = held.flatMap((one) => [...one.problems, ...leafLoadProblems(one.piece.member, one.piece.strands, one.piece.loads)]);
    return { frame: { pieces: held.map(({ piece }) => piece), hangers, props }, problems };
}

/** Which runs are loose does not depend on what lies on them. */
function withoutKnownLoose(piece: Piece, recall: Recall): Held {
    if (piece.strands.length === 1) return withoutLoose(piece);
    const known = recall(`loose ${contentOf(piece)}`, () => {
        const held = withoutLoose(piece);
        return { loose: held.piece.strands.map(({ loose }) => loose), sound: held.problems.length === 0 };
    });
    return known.sound ? { piece: { ...piece, strands: piece.strands.map((strand, i) => ({ ...strand, loose: known.loose[i]! })) }, problems: [] } : withoutLoose(piece);
}

/** A post's upper supports hold it sideways only: it does not rest there. */
function bearsOn(member: Member, support: Support): boolean {
    if (support.kind !== 'member') return false;
    return member.kind === 'beam' || member.supports.every(({ at }) => support.at.value <= at.value);
}
