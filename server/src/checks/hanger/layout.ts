/** Where a hanger's rods stand, and what its plates bear on. Lengths mm. */
import type { Hanger, Member, PlatePart } from '../../../../language/src/model.js';
import { boltGrades, threads } from '../../catalog/bolts.js';
import { rolledSection } from '../../catalog/rolled-sections.js';
import { boltOf, type Bolt } from '../en1993/bolts/bolt.js';
import type { CrossPlate } from '../en1993/rods/cross-plate.js';
import { greatestHole } from '../en1995/fasteners/holes-and-washers.js';
import { unloadedEdge } from '../en1995/fasteners/spacing.js';
import { outline } from '../en1995/section.js';
import { problem, type Problem } from '../verdict.js';

/** One of the two members at the hanger. */
export interface Seat {
    readonly which: 'head' | 'foot';
    readonly member: string;
    /** Sound breadth and depth there. */
    readonly breadth: number;
    readonly depth: number;
    /** Of the sound breadth's middle from the member's, either way. */
    readonly shift: number;
    /** Length of the plate that bears: the breadth of a timber; what is stiff over the web of a rolled beam. */
    readonly stiff: number;
    readonly plate?: PlatePart;
}

export interface RodLayout {
    readonly rod: Bolt;
    /** Of the rods of one line, along the members. */
    readonly perLine: number;
    /** Between two lines; 0 for one line in the middle. */
    readonly spacing: number;
    /** Between rods of one line. */
    readonly pitch: number;
    /** Share of the rod that takes most. */
    readonly greatestShare: number;
    /** Through the timber, not beside it. */
    readonly through: Readonly<Record<Seat['which'], boolean>>;
}

/** How far a rod stands from the end of its plate: EN 1993-1-8 Table 3.3, e1 = 1.2 d0. */
const fromPlateEnd = 1.2;

/**
 * One rod in the middle, or two lines of as many rods, as far apart as their plates let them: the language
 * tells no spacing, and this is the widest and so the worst for the plates.
 */
export function rodLayout({ rods, name }: Pick<Hanger, 'rods' | 'name'>, seats: readonly Seat[]): RodLayout | Problem {
    const thread = threads.get(rods.size);
    const grade = boltGrades.get(rods.grade.value);
    if (!thread || !grade) {
        return problem(`no rod ${rods.size} of grade ${rods.grade.value} is in the tables`);
    }
    if (rods.count !== 1 && rods.count % 2 !== 0) {
        return problem(`how ${rods.count} rods stand is not known: one in the middle, or as many on either side`);
    }
    const rod = boltOf(thread, grade);
    const perLine = Math.max(1, rods.count / 2);
    const plates = seats.flatMap(({ plate }) => plate ? [plate] : []);
    const spacing = rods.count === 1 ? 0 : plates.length > 0
        ? Math.min(...plates.map(({ length }) => length.value)) - 2 * fromPlateEnd * rod.d0
        : Math.min(...seats.map(({ breadth }) => breadth)) - 2 * unloadedEdge(rod.d);
    const pitch = perLine === 1 ? 0 : (Math.min(...plates.map(({ width }) => width.value)) - 2 * fromPlateEnd * rod.d0) / (perLine - 1);
    if (rods.count > 1 && !(spacing > 0) || perLine > 1 && !(pitch > 0 && Number.isFinite(pitch))) {
        return problem(`the rods of ${name} find no room on its plates`);
    }
    const isThrough = (which: Seat['which']): boolean => seats.some(seat => seat.which === which && spacing < clear(seat, rod.d));
    return {
        rod, perLine, spacing, pitch,
        greatestShare: rods.count === 1 ? 1 : greatestShare(seats, spacing, rod.d) / perLine,
        through: { head: isThrough('head'), foot: isThrough('foot') }
    };
}

/** How far apart two lines of rods are that just pass beside what is sound. */
function clear({ breadth, shift }: Seat, d: number): number {
    return breadth + 2 * Math.abs(shift) + d;
}

/** Of the line that a shifted seat is nearer to: rods that stand as close as they can share most unevenly. */
function greatestShare(seats: readonly Seat[], spacing: number, d: number): number {
    const closest = Math.min(spacing, Math.max(...seats.map(seat => clear(seat, d))));
    return Math.min(1, 0.5 + Math.max(...seats.map(({ shift }) => Math.abs(shift))) / closest);
}

/** The plate of a seat as its rods bend it. */
export function crossPlate({ rod, perLine, spacing }: RodLayout, { plate, stiff }: Seat): CrossPlate | undefined {
    return plate && {
        rodSpacing: spacing, contact: Math.min(plate.length.value, stiff),
        width: plate.width.value, thickness: plate.thickness.value, hole: rod.d0, holesPerLine: perLine
    };
}

/** A flange is stiff over its web, root and thickness. */
export function stiffOver({ tw, r, tf, b }: { readonly tw: number; readonly r: number; readonly tf: number; readonly b: number }): number {
    return Math.min(b, tw + 2 * r + 2 * tf);
}

/** A seat on a member's whole section, nothing lost. */
export function wholeSeat(which: Seat['which'], member: Member, plate: PlatePart | undefined): Seat {
    const { b, h } = outline(member);
    const rolled = member.section.shape === 'rolled' ? rolledSection(member.section.designation) : undefined;
    return { which, member: member.name, breadth: b, depth: h, shift: 0, stiff: rolled ? stiffOver(rolled) : b, ...plate && { plate } };
}

/** What rods through a member take of its breadth at their station, mm; undefined where they pass beside it or are not known. */
export function rodHoles(hanger: Hanger, members: readonly Member[], member: Member): { readonly x: number; readonly breadth: number } | undefined {
    const [carrier, carried] = [hanger.from, hanger.carries].map(name => members.find(one => one.name === name));
    const which = carrier === member || carrier?.name === member.name ? 'head' : carried?.name === member.name ? 'foot' : undefined;
    if (!carrier || !carried || !which) {
        return undefined;
    }
    const layout = rodLayout(hanger, [wholeSeat('head', carrier, hanger.headPlate), wholeSeat('foot', carried, hanger.footPlate)]);
    return 'problem' in layout || !layout.through[which] ? undefined
        : { x: which === 'head' ? hanger.fromAt.value : hanger.carriesAt.value, breadth: (hanger.rods.count === 1 ? 1 : 2) * greatestHole(layout.rod.d) };
}

export function seatName({ which, member, plate }: Seat): string {
    return `${which}${plate ? ' plate' : ''} at ${member}`;
}
