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
    const s = 12 * k;
    const m = 6 * L * k;
    const near = (4 + phi) * L * L * k;
    const far = (2 - phi) * L * L * k;
    const local = Float64Array.of(
        a, 0, 0, -a, 0, 0,
        0, s, m, 0, -s, m,
        0, m, near, 0, -m, far,
        -a, 0, 0, a, 0, 0,
        0, -s, -m, 0, s, -m,
        0, m, far, 0, -m, near
    );
    for (let row = 0; row < 36; row += 6) turn(local, row, 1, element);
    for (let column = 0; column < 6; column++) turn(local, column, 6, element);
    return local;
}

/** Nodal forces (global) that stand for a uniform load. */
export function nodalLoads(element: Stiffness, load: LineLoad): Float64Array {
    const L = element.length;
    const axial = (load.along * L) / 2;
    const shear = (-load.down * L) / 2;
    const moment = (load.down * L * L) / 12;
    const forces = Float64Array.of(axial, shear, -moment, axial, shear, moment);
    turn(forces, 0, 1, element);
    return forces;
}

/** From the global displacements of its two nodes, six of `d` from `from` on; writes N, V, M, v, theta, along, down of its start. */
export function writeState(element: Stiffness, d: Float64Array, from: number, { along, down }: LineLoad, states: Float64Array, to: number): void {
    const { length: L, EA, EI, GAs, offset, cos, sin } = element;
    const phi = (12 * EI) / (GAs * L * L);
    const k = EI / (L ** 3 * (1 + phi));
    const t1 = d[from + 2]!;
    const t2 = d[from + 5]!;
    const u1 = cos * d[from]! + sin * d[from + 1]! - offset * t1;
    const u2 = cos * d[from + 3]! + sin * d[from + 4]! - offset * t2;
    const v1 = cos * d[from + 1]! - sin * d[from]!;
    const v2 = cos * d[from + 4]! - sin * d[from + 3]!;
    states[to] = (EA / L) * (u2 - u1) + (along * L) / 2;
    states[to + 1] = 12 * k * (v1 - v2) + 6 * L * k * (t1 + t2) + (down * L) / 2;
    states[to + 2] = -k * L * (6 * (v1 - v2) + (4 + phi) * L * t1 + (2 - phi) * L * t2) - (down * L * L) / 12;
    states[to + 3] = v1;
    states[to + 4] = t1;
    states[to + 5] = along;
    states[to + 6] = down;
}

/** Six local components, `step` apart, times the transform of both nodes from global displacements: in place. */
function turn(values: Float64Array, from: number, step: number, { offset, cos, sin }: Stiffness): void {
    for (let node = from; node < from + 6 * step; node += 3 * step) {
        const u = values[node]!;
        const v = values[node + step]!;
        values[node] = u * cos - v * sin;
        values[node + step] = u * sin + v * cos;
        values[node + 2 * step]! -= u * offset;
    }
}
