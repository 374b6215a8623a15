/** What leaves and plates of a flitch beam take, by transformed stiffness. */
import type { FlitchSection } from '../../../../../language/src/model.js';
import type { Combination } from '../../../analysis/actions.js';
import { flitchShares, type FlitchShares } from '../../../analysis/flitch.js';
import { modulusAfter } from '../../../analysis/layered.js';
import { flitchParts } from '../../../catalog/elements.js';
import { steelNamed } from '../../../catalog/steel-material.js';
import type { SteelStrength } from '../../../catalog/steel.js';
import type { MemberContext } from '../../check.js';
import { problem, type Problem } from '../../verdict.js';

export function plateSteel({ materials }: MemberContext, { steel, thickness }: FlitchSection): SteelStrength | Problem {
    const found = steelNamed(steel.value, thickness.value, materials);
    return 'steel' in found ? found.steel : problem(found.problem);
}

/** At first, when the timber takes most. */
export function timberShares(context: MemberContext, section: FlitchSection): FlitchShares | Problem {
    return sharesWith(context, section, context.strength.E0_mean);
}

/** In the end, and with the timber at its 5 % value, when the plates take most. */
export function stiffestShares(context: MemberContext, section: FlitchSection): FlitchShares | Problem {
    const { strength, parameters, job } = context;
    return sharesWith(context, section, modulusAfter(strength.E0_05, parameters.kdef(strength.product, job.serviceClass)));
}

function sharesWith(context: MemberContext, section: FlitchSection, E: number): FlitchShares | Problem {
    const steel = plateSteel(context, section);
    return 'problem' in steel ? steel : flitchShares(flitchParts(section, E, steel.E));
}

export function boltStations({ bolts }: FlitchSection): readonly number[] {
    return [...new Set(bolts.flatMap(({ places }) => places.map(({ x }) => x)))].sort((a, b) => a - b);
}

export function combinationsOf({ actions }: MemberContext): readonly Combination[] {
    return [...new Set(actions.stations.flatMap(({ states }) => states.map(({ combination }) => combination)))];
}

/** N mm of the whole beam, straight between stations. Every station of a flitch beam has every combination; NaN, which fails, where one lacks. */
export function momentAt({ actions: { stations } }: MemberContext, x: number, wanted: Combination): number {
    const M = (i: number): number => stations[i]!.states.find(({ combination }) => combination === wanted)?.M ?? NaN;
    const next = stations.findIndex(station => station.x >= x);
    if (next <= 0) {
        return next < 0 ? 0 : M(0);
    }
    const [a, b] = [stations[next - 1]!.x, stations[next]!.x];
    return b > a ? M(next - 1) + (M(next) - M(next - 1)) * (x - a) / (b - a) : M(next);
}

/** Moment of all plates together at a station, N mm: straight between bolts, nought at the first and the last of them. */
export function plateMoment(context: MemberContext, section: FlitchSection, share: number, x: number, combination: Combination): number {
    const stations = boltStations(section);
    const next = stations.findIndex(station => station >= x);
    if (next <= 0) {
        return 0;
    }
    const M = (i: number): number => i === 0 || i === stations.length - 1 ? 0 : share * momentAt(context, stations[i]!, combination);
    const [a, b] = [stations[next - 1]!, stations[next]!];
    return M(next - 1) + (M(next) - M(next - 1)) * (x - a) / (b - a);
}
