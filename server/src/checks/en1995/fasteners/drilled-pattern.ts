import { problem, unsound, type Problem } from '../../verdict.js';
import type { Force } from './force.js';

/** Where a bolt goes through a piece: mm along from the piece's own reference, and up from its own. */
export interface DrilledBolt {
    readonly station: number;
    readonly height: number;
}

/** One leaf piece, grain along x, between two ends (a butt is one) and two edges. mm. */
export interface Piece {
    readonly start: number;
    readonly end: number;
    readonly bottom: number;
    readonly top: number;
}

export interface DrilledPattern {
    /** Bolt diameter, mm. */
    readonly d: number;
    readonly piece: Piece;
    /** Those that go through this piece. */
    readonly bolts: readonly DrilledBolt[];
}

/** What makes a pattern one that cannot be judged; `loads` are the forces of each bolt. */
export function badPattern({ d, piece, bolts }: DrilledPattern, loads: readonly (readonly Force[])[]): Problem | undefined {
    const depth = piece.top - piece.bottom;
    const wrong = unsound('positive', { 'the bolt diameter': d, 'the length of the piece': piece.end - piece.start, 'the depth of the piece': depth });
    if (wrong) {
        return wrong;
    }
    if (d >= depth) {
        return problem(`a bolt of ${d} mm is larger than a leaf ${depth} mm deep`);
    }
    if (loads.length !== bolts.length) {
        return problem(`${bolts.length} bolts need as many lists of forces, not ${loads.length}`);
    }
    const taken = new Map<string, number>();
    for (const [i, bolt] of bolts.entries()) {
        const bad = badBolt(i, bolt, piece, loads[i]!, taken.get(`${bolt.station} ${bolt.height}`));
        if (bad) {
            return bad;
        }
        taken.set(`${bolt.station} ${bolt.height}`, i);
    }
    return undefined;
}

function badBolt(i: number, { station, height }: DrilledBolt, piece: Piece, loads: readonly Force[], twin: number | undefined): Problem | undefined {
    const inside = station > piece.start && station < piece.end && height > piece.bottom && height < piece.top;
    const force = loads.reduce((sum, { x, z }) => sum + x + z, 0);
    if (inside && twin === undefined && Number.isFinite(force)) {
        return undefined;
    }
    const name = `bolt ${i + 1}`;
    return unsound('finite', { [`the station of ${name}`]: station, [`the height of ${name}`]: height, [`a force of ${name}`]: force })
        ?? problem(inside ? `bolts ${twin! + 1} and ${i + 1} are at one place: their spacing is nought` : `${name} at ${station} mm, height ${height} mm, is not within the piece`);
}
