/**
 * Layers one above another, joined by fasteners that slip: EN 1995-1-1 Annex B (γ-method), two or three parts.
 * Part 1 above part 2 above part 3; two parts are 1 and 2. N, mm, MPa. Cases GM-01 to GM-05.
 */
import { problem, unsound, type Problem } from './problem.js';

export interface Layer {
    readonly b: number;
    readonly h: number;
    /** Mean; divided by (1 + ψ2 kdef) for the final state, see `modulusAfter`. */
    readonly E: number;
}

/** Fasteners of one joint between two layers. */
export interface Joint {
    /** Slip modulus of one fastener, N/mm: K_ser for serviceability, K_u = 2/3 K_ser for strength. Infinity for a glued joint, 0 for none. */
    readonly K: number;
    /** Spacing of the fasteners along the beam, all rows put in one line, mm. */
    readonly s: number;
}

export interface Layered {
    readonly layers: readonly [Layer, Layer] | readonly [Layer, Layer, Layer];
    /** One for each joint, from above. */
    readonly joints: readonly Joint[];
    /** Effective span, mm: see `effectiveSpan`. */
    readonly span: number;
}

export interface LayerState {
    readonly gamma: number;
    /** From the layer's middle to the neutral axis of the whole: positive for an outer layer on its own side, and for part 2 where the axis lies towards part 1. */
    readonly a: number;
}

export interface LayeredStiffness {
    /** N mm². */
    readonly EIef: number;
    readonly states: readonly LayerState[];
}

/** Of the span of a simple beam; 0.8 of a continuous beam's, twice a cantilever's. EN 1995-1-1 B.1.2(2), from memory. */
export const effectiveSpan = (span: number, kind: 'simple' | 'continuous' | 'cantilever'): number =>
    span * { simple: 1, continuous: 0.8, cantilever: 2 }[kind];

/** E or K after creep: EN 1995-1-1 2.3.2.2, (2.7) to (2.12) with ψ2 = 1 where all is permanent. */
export const modulusAfter = (modulus: number, kdef: number, psi2 = 1): number => modulus / (1 + psi2 * kdef);

/** (EI)_ef with γ_i and a_i, (B.1) to (B.6). */
export function layeredStiffness(beam: Layered): LayeredStiffness | Problem {
    return faultOf(beam) ?? stiffnessOf(beam);
}

function stiffnessOf({ layers, joints, span }: Layered): LayeredStiffness {
    const [first, second, third] = layers;
    const area = ({ b, h, E }: Layer): number => E * b * h;
    const gammaOf = (layer: Layer, { K, s }: Joint): number =>
        K > 0 ? 1 / (1 + Math.PI ** 2 * area(layer) * s / (K * span ** 2)) : 0;
    const gammas = [gammaOf(first, joints[0]!), 1, ...(third ? [gammaOf(third, joints[1]!)] : [])];
    const upper = gammas[0]! * area(first);
    const lower = third ? gammas[2]! * area(third) : 0;
    const a2 = (upper * (first.h + second.h) - (third ? lower * (second.h + third.h) : 0)) / (2 * (upper + area(second) + lower));
    const arms = [(first.h + second.h) / 2 - a2, a2, ...(third ? [(second.h + third.h) / 2 + a2] : [])];
    const EIef = layers.reduce((sum, layer, i) => sum + layer.E * layer.b * layer.h ** 3 / 12 + gammas[i]! * area(layer) * arms[i]! ** 2, 0);
    return { EIef, states: gammas.map((gamma, i) => ({ gamma, a: arms[i]! })) };
}

export interface LayeredStress {
    /** Each layer: at its middle (tension or compression) and the bending part at its edges, MPa, sizes. */
    readonly layers: readonly { readonly axial: number; readonly bending: number }[];
    /** Greatest shear stress, in part 2, MPa. */
    readonly shear: number;
    /** Force on one fastener of each joint, N; 0 where nothing joins. */
    readonly fasteners: readonly number[];
}

/** Stresses under M (N mm) and V (N), sizes alone, (B.7) to (B.10). */
export function layeredStress(beam: Layered, M: number, V: number): LayeredStress | Problem {
    return faultOf(beam) ?? unsound('finite', { 'the moment': M, 'the shear force': V }) ?? stressOf(beam, Math.abs(M), Math.abs(V));
}

function stressOf(beam: Layered, M: number, V: number): LayeredStress {
    const { layers, joints } = beam;
    const { EIef, states } = stiffnessOf(beam);
    const [, second, third] = layers;
    const pull = (i: number): number => states[i]!.gamma * layers[i]!.E * layers[i]!.b * layers[i]!.h * states[i]!.a;
    // (B.9): from the neutral axis to the edge of part 2 that has no part 3, and part 3's pull where it is there.
    const depth = second.h / 2 + states[1]!.a;
    return {
        layers: layers.map((layer, i) => ({ axial: Math.abs(states[i]!.gamma * layer.E * states[i]!.a) * M / EIef, bending: 0.5 * layer.E * layer.h * M / EIef })),
        shear: ((third ? pull(2) : 0) + 0.5 * second.E * second.b * depth ** 2) * V / (second.b * EIef),
        fasteners: joints.map(({ s }, i) => Math.abs(pull(i === 0 ? 0 : 2)) * s * V / EIef)
    };
}

function faultOf({ layers, joints, span }: Layered): Problem | undefined {
    if (joints.length !== layers.length - 1) {
        return problem(`${layers.length} layers have ${layers.length - 1} joints between them, not ${joints.length}`);
    }
    const stiff = joints.find(({ K }) => Number.isNaN(K) || K < 0);
    const bad = [...layers.map(({ b, h, E }) => unsound('positive', { 'a layer\'s breadth': b, 'a layer\'s depth': h, 'a layer\'s E': E })),
        ...joints.map(({ s }) => unsound('positive', { 'the spacing of the fasteners': s }))].find(Boolean);
    return unsound('positive', { 'the span': span }) ?? bad ?? (stiff && problem('the slip modulus of a fastener is 0 or more'));
}
