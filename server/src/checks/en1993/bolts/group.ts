/** Elastic force on each bolt of a group in shear: polar method, rigid plates, equal bolts. Standard mechanics (case BG-01). */
export interface BoltPlace { readonly x: number; readonly y: number }

export interface BoltForce extends BoltPlace {
    readonly fx: number;
    readonly fy: number;
    readonly force: number;
}

/** Group at those places (mm) under forces Fx, Fy (N) and a moment M (N mm, x towards y) about its centre; none for no bolts. */
export function groupForces(places: readonly BoltPlace[], load: { readonly Fx: number; readonly Fy: number; readonly M: number }): readonly BoltForce[] {
    const n = places.length;
    const x0 = places.reduce((sum, { x }) => sum + x, 0) / n;
    const y0 = places.reduce((sum, { y }) => sum + y, 0) / n;
    const polar = places.reduce((sum, { x, y }) => sum + (x - x0) ** 2 + (y - y0) ** 2, 0);
    const turn = polar > 0 ? load.M / polar : load.M === 0 ? 0 : Infinity;
    return places.map(({ x, y }) => {
        const fx = load.Fx / n - swing(turn, y - y0);
        const fy = load.Fy / n + swing(turn, x - x0);
        return { x, y, fx, fy, force: polar > 0 || load.M === 0 ? Math.hypot(fx, fy) : Infinity };
    });
}

/** A lone bolt cannot carry a moment: its force is then Infinity, and never NaN. */
const swing = (turn: number, arm: number): number => arm === 0 ? 0 : turn * arm;
