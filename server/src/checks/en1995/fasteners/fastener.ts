import { rootDiameter, type BoltGrade, type Thread } from '../../../catalog/bolts.js';
import { bendingYieldMoment, type YieldMoment } from './yield-moment.js';

/** A bolt or a threaded rod across the grain. Lengths mm, strengths MPa. */
export interface Fastener extends YieldMoment {
    /** `M12 8.8 bolt`. */
    readonly name: string;
    /** Nominal diameter: holes, spacings, edge distances, washers. */
    readonly d: number;
    /** Tensile stress area, mm². */
    readonly As: number;
}

/** A bolt: EN 1995-1-1 8.5.1 takes the bolt's diameter, whether or not its thread stands in a shear plane. */
export function boltFastener(thread: Thread, grade: BoltGrade): Fastener {
    return fastener(`${thread.name} ${grade.name} bolt`, thread, grade, thread.d, 'EN 1995-1-1 8.5.1.1: the bolt diameter');
}

/**
 * A threaded rod used as a bolt. EN 1995-1-1 8.5 does not speak of thread along the whole shank. The lesser is
 * taken of the diameter with the thread's stress area, and 1.1 times the root diameter as 8.7.1(3) has it
 * for threaded screws (from memory); own decision on the safe side.
 */
export function rodFastener(thread: Thread, grade: BoltGrade): Fastener {
    const d_ef = Math.min(Math.sqrt(4 * thread.As / Math.PI), 1.1 * rootDiameter(thread));
    return fastener(`${thread.name} ${grade.name} threaded rod`, thread, grade, d_ef,
        'the diameter with the stress area of the thread, below 1.1 times the root diameter (by analogy with EN 1995-1-1 8.7.1(3), from memory)');
}

function fastener(name: string, thread: Thread, grade: BoltGrade, d_ef: number, diameterSource: string): Fastener {
    return {
        name, d: thread.d, d_ef, As: thread.As, fu_k: grade.fub,
        My_Rk: bendingYieldMoment(grade.fub, d_ef), diameterSource
    };
}
