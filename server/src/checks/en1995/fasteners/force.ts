/** A force in the plane of the bolted faces: x along the member from its start, z upwards; N. */
export interface Force {
    readonly x: number;
    readonly z: number;
}

export function magnitude({ x, z }: Force): number {
    return Math.hypot(x, z);
}

/**
 * Angle α between a force and the grain, 0 to π/2 rad. `grain` is its direction from x, rad.
 * A force of nought counts as one across the grain, where timber bears least.
 */
export function angleToGrain(force: Force, grain = 0): number {
    const { along, across } = components(force, grain);
    return along === 0 && across === 0 ? Math.PI / 2 : Math.atan2(Math.abs(across), Math.abs(along));
}

/** Signed parts of a force along and across the grain, N. EN 1995-1-1 8.1.2(5) and 8.1.4 check them apart. */
export function components({ x, z }: Force, grain = 0): { readonly along: number; readonly across: number } {
    const cos = Math.cos(grain);
    const sin = Math.sin(grain);
    return { along: x * cos + z * sin, across: z * cos - x * sin };
}
