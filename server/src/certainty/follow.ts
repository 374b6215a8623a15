/** What the text works out from an input has to follow it: the amount of a load over its strip, the places of bolts. */
import type { BoltRow, Load, Member, Model, Section } from '../../../language/src/model.js';

/** `changed` is `before` with other values of inputs; what did not change keeps its identity. */
export function follow(before: Model, changed: Model): Model {
    const carriers = new Map(changed.members.map((member, i) => [member.name, { length: member.length.value, same: member.length === before.members[i]?.length }]));
    return {
        ...changed,
        loads: changed.loads.map((load, i) => {
            const carrier = carriers.get(load.member);
            return load === before.loads[i] && carrier?.same !== false ? load : spreadAgain(load, carrier?.length);
        }),
        members: changed.members.map((member, i) => crossingAtTop(before, changed, member === before.members[i] ? member : boltedAgain(member)))
    };
}

/** From end to end of the member where nothing else is said. */
function spreadAgain(load: Load, length: number | undefined): Load {
    const { amount, strip, at, from, to, point, line } = load;
    return {
        ...load,
        ...(point && { point: { force: amount.value, at: at?.value ?? point.at } }),
        ...(line && { line: { perLength: amount.value * (strip?.value ?? 1), from: from?.value ?? line.from, to: to?.value ?? length ?? line.to } })
    };
}

/** A post carries at its top where nothing else is said: then the station is the very length in the text. */
function crossingAtTop(before: Model, changed: Model, member: Member): Member {
    const follows = member.supports.map((support) => {
        const carrier = support.stationOnCarrier && before.members.find(({ name }) => name === support.on);
        const length = changed.members.find(({ name }) => name === carrier?.name)?.length;
        return carrier && length && length !== carrier.length && support.stationOnCarrier?.source.start === carrier.length.source.start
            ? { ...support, stationOnCarrier: { ...support.stationOnCarrier, value: length.value } } : support;
    });
    return follows.some((support, i) => support !== member.supports[i]) ? { ...member, supports: follows } : member;
}

function boltedAgain(member: Member): Member {
    const { section } = member;
    return section.shape === 'plies' || section.shape === 'flitch' ? { ...member, section: withBolts(section, member.length.value) } : member;
}

function withBolts<S extends Extract<Section, { readonly bolts: readonly BoltRow[] }>>(section: S, length: number): S {
    return { ...section, bolts: section.bolts.map((row) => placedAgain(row, length)) };
}

/** Above the middle, in it, below it, in it: see Member in language.md. */
const cycle = [1, 0, -1, 0] as const;

/** Evenly between the end distances, with a pitch of at most the spacing. */
function placedAgain(row: BoltRow, length: number): BoltRow {
    const { spacing, ends, zigzag, places: [first] } = row;
    if (first === undefined) return row;
    const height = (i: number) => (zigzag?.value ?? 0) * cycle[i % cycle.length]!;
    if (spacing === undefined) return { ...row, places: row.places.map((place, i) => ({ ...place, height: height(i) })) };
    const end = ends?.value ?? first.x;
    const run = length - 2 * end;
    const steps = Math.ceil(run / spacing.value - 1e-9);
    const places = run < 0 || !Number.isFinite(steps) ? [] : Array.from({ length: steps + 1 }, (_, i) =>
        ({ ...first, x: end + (steps === 0 ? 0 : run * i / steps), height: height(i) }));
    return { ...row, places };
}
