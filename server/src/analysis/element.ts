/**
 * The exact plane element of a straight prismatic beam with shear deformation, two nodes, uniform load.
 *
 * Degrees of freedom at a node: U to the right, V up, θ anticlockwise, of the member's own axis in global axes.
 * The element's axis lies `offset` above the member's (rigid arms): a residual section bends about its own centroid,
 * and an axial force then bends it. Line loads act on the element's axis.
 * Shear area 5/6 A of a rectangle. Source: J. S. Przemieniecki, Theory of Matrix Structural Analysis (1968), 5.6 (from memory);
 * held by tests against closed forms and an independent model.
 */
export interface Stiffness {
    readonly length: number;
    /** N, N·mm², N. */
    readonly EA: number;
    readonly EI: number;
    readonly GAs: number;
    /** mm above the member's axis. */
    readonly offset: number;
    readonly cos: number;
    readonly sin: number;
}

/** Uniform load per length of the member: along its axis to its end, and normal to it downwards. */
export interface LineLoad { readonly along: number; readonly down: number }

/** Internal forces and displacements at the element's start: everything inside follows by integration. */
export interface ElementState extends LineLoad {
    readonly N: number;
    readonly V: number;
    readonly M: number;
    /** Normal to the axis, upwards; and the rotation of the section. */
    readonly v: number;
    readonly theta: number;
}

export function rectangleStiffness(E: number, G: number, b: number, h: number): Pick<Stiffness, 'EA' | 'EI' | 'GAs'> {
    return { EA: E * b * h, EI: (E * b * h ** 3) / 12, GAs: (5 / 6) * G * b * h };
}

export function stiffnessMatrix(element: Stiffness): Float64Array {
    const { length: L, EA, EI, GAs } = element;
    const phi = (12 * EI) / (GAs * L * L);
    const k = EI / (L ** 3 * (1 + phi));
    const a = EA / L;
    const [s, m, near, far] = [12 * k, 6 * L * k, (4 + phi) * L * L * k, (2 - phi) * L * L * k];
    const local = [
        [a, 0, 0, -a, 0, 0],
        [0, s, m, 0, -s, m],
        [0, m, near, 0, -m, far],
        [-a, 0, 0, a, 0, 0],
        [0, -s, -m, 0, s, -m],
        [0, m, far, 0, -m, near]
    ];
    const t = transform(element);
    const half = Array.from({ length: 6 }, (_, row) => rotateRow(local[row]!, t));
    const matrix = new Float64Array(36);
    for (let column = 0; column < 6; column++) {
        const turned = rotateRow(half.map((row) => row[column]!), t);
        for (let row = 0; row < 6; row++) matrix[row * 6 + column] = turned[row]!;
    }
    return matrix;
}

/** Nodal forces (global) that stand for a uniform load. */
export function nodalLoads(element: Stiffness, load: LineLoad): readonly number[] {
    const L = element.length;
    const [axial, shear, moment] = [(load.along * L) / 2, (-load.down * L) / 2, (load.down * L * L) / 12];
    return rotateRow([axial, shear, -moment, axial, shear, moment], transform(element));
}

/** From the global displacements of its two nodes, six of `d` from `from` on; writes N, V, M, v, theta, along, down of its start. */
export function writeState(element: Stiffness, d: Float64Array, from: number, { along, down }: LineLoad, states: Float64Array, to: number): void {
    const { length: L, EA, EI, GAs, offset, cos, sin } = element;
    const phi = (12 * EI) / (GAs * L * L);
    const k = EI / (L ** 3 * (1 + phi));
    const [U1, V1, t1, U2, V2, t2] = [d[from]!, d[from + 1]!, d[from + 2]!, d[from + 3]!, d[from + 4]!, d[from + 5]!];
    const u1 = cos * U1 + sin * V1 - offset * t1;
    const u2 = cos * U2 + sin * V2 - offset * t2;
    const v1 = cos * V1 - sin * U1;
    const v2 = cos * V2 - sin * U2;
    states[to] = (EA / L) * (u2 - u1) + (along * L) / 2;
    states[to + 1] = 12 * k * (v1 - v2) + 6 * L * k * (t1 + t2) + (down * L) / 2;
    states[to + 2] = -k * L * (6 * (v1 - v2) + (4 + phi) * L * t1 + (2 - phi) * L * t2) - (down * L * L) / 12;
    states[to + 3] = v1;
    states[to + 4] = t1;
    states[to + 5] = along;
    states[to + 6] = down;
}

type Transform = readonly (readonly [number, number, number])[];

/** Local from global displacements of one node. */
function transform({ offset, cos, sin }: Stiffness): Transform {
    return [[cos, sin, -offset], [-sin, cos, 0], [0, 0, 1]];
}

/** Six local components times the transform of both nodes. */
function rotateRow(row: readonly number[], t: Transform): number[] {
    const out: number[] = [];
    for (let node = 0; node < 6; node += 3) {
        for (let j = 0; j < 3; j++) {
            out.push(row[node]! * t[0]![j]! + row[node + 1]! * t[1]![j]! + row[node + 2]! * t[2]![j]!);
        }
    }
    return out;
}
