/** The bolts of a built-up member with all planes' forces together, combination by combination. */
import type { BoltRow } from '../../../../../language/src/model.js';
import type { BoltActions, Combination } from '../../../analysis/actions.js';
import { boltGrades, threads } from '../../../catalog/bolts.js';
import type { TimberStrength } from '../../../catalog/timber.js';
import type { MemberContext } from '../../check.js';
import { boltFastener, type Fastener } from '../fasteners/fastener.js';
import type { DesignFactors } from '../fasteners/design-value.js';
import { magnitude, type Force } from '../fasteners/force.js';
import type { TimberLeaf } from '../fasteners/leaf.js';

export interface BoltCase {
    readonly combination: Combination;
    /** What leaf i puts on leaf i + 1, N; from the first plane on. */
    readonly forces: readonly Force[];
}

export interface ThroughBolt {
    /** `M12 at 1.25 m, 50 mm above the axis`. */
    readonly name: string;
    readonly x: number;
    readonly height: number;
    readonly d: number;
    readonly fastener: Fastener;
    readonly cases: readonly BoltCase[];
}

/** Every bolt whose size and grade are in the tables; asked for by more than one check. */
export function throughBolts(rows: readonly BoltRow[], actions: readonly BoltActions[]): readonly ThroughBolt[] {
    const found = known.get(actions) ?? laidOut(rows, actions);
    known.set(actions, found);
    return found;
}

const known = new WeakMap<readonly BoltActions[], readonly ThroughBolt[]>();

function laidOut(rows: readonly BoltRow[], actions: readonly BoltActions[]): readonly ThroughBolt[] {
    return rows.flatMap((row, r) => {
        const fastener = fastenerOf(row);
        return fastener ? row.places.map(({ x, height }, p): ThroughBolt => ({
            name: boltName(row, x, height), x, height, d: row.diameter, fastener,
            cases: casesOf(actions.filter(({ row: ofRow, place }) => ofRow === r && place === p))
        })) : [];
    });
}

/** Sizes and grades that are not in the tables, in words. */
export function unknownBolts(rows: readonly BoltRow[]): readonly string[] {
    return rows.filter(row => !fastenerOf(row)).map(({ size, grade }) => `no bolt ${size} of grade ${grade.value} is in the tables`);
}

export function fastenerOf({ size, grade }: BoltRow): Fastener | undefined {
    const thread = threads.get(size);
    const found = boltGrades.get(grade.value);
    return thread && found && boltFastener(thread, found);
}

export function boltName({ size }: BoltRow, x: number, height: number): string {
    const level = Math.round(height);
    const where = level === 0 ? 'on the axis' : `${Math.abs(level)} mm ${level > 0 ? 'above' : 'below'} the axis`;
    return `${size} at ${(x / 1000).toFixed(2)} m, ${where}`;
}

/** Planes by combination. A plane that a combination was not found to govern has its own greatest force there, on the safe side. */
function casesOf(actions: readonly BoltActions[]): readonly BoltCase[] {
    const planes = [...actions].sort((a, b) => a.plane - b.plane).map(({ states }) => ({
        greatest: states.reduce<Force>((most, one) => magnitude(forceOn(one)) > magnitude(most) ? forceOn(one) : most, { x: 0, z: 0 }),
        of: new Map(states.map(one => [one.combination, forceOn(one)]))
    }));
    const combinations = new Set(actions.flatMap(({ states }) => states.map(({ combination }) => combination)));
    return [...combinations].map(combination => ({ combination, forces: planes.map(({ of, greatest }) => of.get(combination) ?? greatest) }));
}

/** The actions tell what the left leaf gets; the right one gets the opposite. */
function forceOn({ along, across }: { readonly along: number; readonly across: number }): Force {
    return { x: -along, z: -across };
}

/** What a bolt puts on a leaf (from 1), N. */
export function forceOnLeaf(forces: readonly Force[], leaf: number): Force {
    const none: Force = { x: 0, z: 0 };
    const [before, after] = [forces[leaf - 2] ?? none, forces[leaf - 1] ?? none];
    return { x: before.x - after.x, z: before.z - after.z };
}

export function timberLeaf({ rho_k, softwood }: TimberStrength, thickness: number): TimberLeaf {
    return { kind: 'timber', thickness, rho_k, wood: softwood ? 'softwood' : 'hardwood', grain: 0 };
}

export function connectionFactors(context: MemberContext, { duration }: Combination): DesignFactors {
    return timberFactors(context, duration);
}

/** Of a connection in this member's timber. */
export function timberFactors({ strength, job, parameters }: MemberContext, duration: Combination['duration']): DesignFactors {
    return { kmod: parameters.kmod(strength.product, job.serviceClass, duration), gammaM: parameters.gammaM('connection') };
}
