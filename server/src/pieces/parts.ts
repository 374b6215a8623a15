/** What a design has to be made of, counted. */
import type { BoltRow, Hanger, Member, Splice } from '../../../language/src/model.js';

export interface Parts {
    readonly pieces: number;
    /** Between leaves and in splices. */
    readonly bolts: number;
    /** Of hangers and splices. */
    readonly plates: number;
    readonly rods: number;
}

/** Nuts and washers go with their bolts and rods and are not counted. */
export function partsOf(pieces: number, members: readonly Member[], hangers: readonly Hanger[]): Parts {
    const splices = members.flatMap(member => member.splices);
    return {
        pieces,
        bolts: sum(members.flatMap(rowsOf), ({ places }) => places.length) + sum(splices, boltsOf),
        plates: sum(splices, platesOf) + sum(hangers, ({ headPlate, footPlate }) => Number(headPlate !== undefined) + Number(footPlate !== undefined)),
        rods: sum(hangers, ({ rods }) => rods.count)
    };
}

export const total = ({ pieces, bolts, plates, rods }: Parts): number => pieces + bolts + plates + rods;

function rowsOf({ section }: Member): readonly BoltRow[] {
    return section.shape === 'plies' || section.shape === 'flitch' ? section.bolts : [];
}

/** An end plate's bolts are counted in all; those of covers for one side of the joint, and a flange's for one of the two. */
function boltsOf({ plates, bolts: [first, second] }: Splice): number {
    const ofCovers = 4 * (first?.count ?? 0) + 2 * (second?.count ?? 0);
    return plates.some(({ where }) => where === 'end') ? first?.count ?? 0 : ofCovers;
}

/** Every plate that is named is there twice: on both beam ends, on both sides of the web, or on both flanges. */
const platesOf = ({ plates }: Splice): number => 2 * plates.length;

function sum<T>(items: readonly T[], of: (item: T) => number): number {
    return items.reduce((all, item) => all + of(item), 0);
}
