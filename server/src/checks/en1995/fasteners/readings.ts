/**
 * How the shear planes of one bolt share its leaves.
 *
 * Two leaves: EN 1995-1-1 8.2.2 or 8.2.3 as it stands. With more, 8.1.3(1) takes each plane as part of
 * three-member joints, which says what happens where the planes are loaded to and fro alike; in a built-up
 * beam with staggered butts they are not. Two readings are computed then, both on the safe side (own derivation
 * from the lower-bound theorem of plasticity, no published source; the tests compare them with the rigid-plastic
 * optimum of a linear programme), and the better one counts.
 */
import { magnitude, type Force } from './force.js';
import { alone, type Hold } from './leaf.js';

/** A shear plane under the force that it has in a reading. */
export interface LoadedPlane {
    readonly plane: number;
    /** N. */
    readonly force: Force;
    readonly near: Hold;
    readonly far: Hold;
}

/** The bolt's utilisation is the greatest of its main parts plus the greatest of what comes besides. */
export interface Reading {
    readonly name: string;
    readonly main: readonly LoadedPlane[];
    readonly besides: readonly LoadedPlane[];
}

/** Of the greatest plane force: less than this is the noise of the analysis, and counts as none. */
const noise = 1e-9;

/** Every reading that holds for these plane forces; at least one. */
export function readingsOf(forces: readonly Force[]): readonly Reading[] {
    const greatest = Math.max(...forces.map(magnitude));
    const loaded = forces.map(force => magnitude(force) > noise * greatest ? force : { x: 0, z: 0 });
    return forces.length === 1 || greatest === 0 ? [alternating(loaded)] : [shared(loaded), alternating(loaded)];
}

/** Each plane in single shear, with that part of an inner leaf's thickness which its force is of the forces in that leaf's two planes. */
function shared(forces: readonly Force[]): Reading {
    const size = forces.map(magnitude);
    const hold = (plane: number, neighbour: number): Hold => {
        const other = size[neighbour];
        return other === undefined ? alone : { share: size[plane]! / (size[plane]! + other), held: false };
    };
    return {
        name: 'each plane by itself, inner leaves shared out between their planes',
        main: forces.flatMap((force, plane) =>
            size[plane] === 0 ? [] : [{ plane, force, near: hold(plane, plane - 1), far: hold(plane, plane + 1) }]),
        besides: []
    };
}

/**
 * The mean to-and-fro force of the planes by EN 1995-1-1 (8.7), (8.11) to (8.13); what each plane has besides,
 * by single shear in half of each inner leaf. One plane alone has nothing besides.
 */
function alternating(forces: readonly Force[]): Reading {
    const sign = (plane: number): number => plane % 2 === 0 ? 1 : -1;
    const mean = {
        x: forces.reduce((sum, { x }, plane) => sum + sign(plane) * x, 0) / forces.length,
        z: forces.reduce((sum, { z }, plane) => sum + sign(plane) * z, 0) / forces.length
    };
    const holds = (plane: number, inner: Hold) => ({
        near: plane === 0 ? alone : inner, far: plane === forces.length - 1 ? alone : inner
    });
    const besides = forces.map(({ x, z }, plane) => ({
        plane, force: { x: x - sign(plane) * mean.x, z: z - sign(plane) * mean.z },
        ...holds(plane, { share: 0.5, held: false })
    }));
    return {
        name: forces.length === 1 ? 'one shear plane' : 'planes loaded to and fro alike, and what differs from that',
        main: forces.map((_, plane) => ({ plane, force: mean, ...holds(plane, { share: 1, held: true }) })),
        besides: besides.filter(({ force }) => magnitude(force) > 0)
    };
}
