/** Stations of a member and the candidate states there. */
import type { ActionState, DiagramPoint, Station, UnitCase } from './actions.js';
import type { Combine, Rule } from './combinations.js';
import type { Effects, Place } from './effects.js';
import type { Node, PieceMesh } from './mesh.js';
import { combined, place, type Placement } from './placement.js';

/** Parts an element is looked at in, beside its ends. */
const partsOfElement = 9;

/** Both ends of every element and eight places between; where nothing jumps at a node, its left side speaks for both. */
export function gridOf({ elements }: PieceMesh, jumps: (node: number) => boolean): Place[] {
    return elements.flatMap(({ length, x, node }, element) => {
        const places = Array.from({ length: partsOfElement + 1 }, (_, i): Place => {
            const into = (length * i) / partsOfElement;
            return { element, into, x: x + into };
        });
        return node > 0 && !jumps(node) ? places.slice(1) : places;
    });
}

/** Nodes where a section, a force or a support makes a diagram jump. */
export function jumpsOf({ elements, nodes, piece }: PieceMesh, forced: ReadonlySet<number>): (node: number) => boolean {
    const near = (node: Node, x: number): boolean => Math.abs(node.x - x) < 1e-4 * piece.member.length.value;
    return (node) => forced.has(node)
        || elements[node - 1]?.segment !== elements[node]?.segment
        || piece.member.supports.some((support) => near(nodes[node]!, support.at.value))
        || piece.bearers.some(({ at }) => near(nodes[node]!, at));
}

/** Places between grid places where V passes zero in a state that is extreme in M: the peak of its moment. */
export function peaksOf(effects: Effects, permanent: Effects, rules: readonly Rule[]): Place[] {
    const { places, cases, M, V } = effects;
    const peaks: Place[] = [];
    for (const rule of rules) {
        for (let s = 0; s + 1 < places.length; s++) {
            const [a, b] = [places[s]!, places[s + 1]!];
            if (a.element !== b.element) continue;
            const placed = place(rule, M, s * cases);
            for (const choice of [placed.most, placed.least]) {
                const left = combined(rule, choice, permanent.V[s]!, V, s * cases);
                const right = combined(rule, choice, permanent.V[s + 1]!, V, (s + 1) * cases);
                if (left * right >= 0) continue;
                const into = a.into + ((b.into - a.into) * left) / (left - right);
                peaks.push({ element: a.element, into, x: a.x - a.into + into });
            }
        }
    }
    return peaks;
}

/** In order along the member; of places nearer to each other than `gap` within an element one is kept. */
export function merge(grid: readonly Place[], peaks: readonly Place[], gap: number): Place[] {
    const all = [...grid, ...peaks].sort((a, b) => a.element - b.element || a.into - b.into);
    const kept: Place[] = [];
    const fixed = new Set(grid);
    for (const one of all) {
        const last = kept.at(-1);
        const close = last && last.element === one.element && one.into - last.into < gap;
        if (!close) kept.push(one);
        else if (fixed.has(one)) kept[kept.length - 1] = one;
    }
    return kept;
}

/** Sums over the permanent cases, as effects of one case. */
export function permanentSum(effects: Effects, cases: readonly UnitCase[]): Effects {
    const ids = cases.flatMap((unit) => (unit.permanent ? [unit.id] : []));
    const sum = (values: Float64Array): Float64Array => Float64Array.from(effects.places, (_, s) =>
        ids.reduce((total, id) => total + values[s * effects.cases + id]!, 0));
    return { cases: 1, places: effects.places, N: sum(effects.N), V: sum(effects.V), M: sum(effects.M) };
}

export function stationsOf(mesh: PieceMesh, effects: Effects, permanent: Effects, rules: readonly Rule[], combine: Combine): Station[] {
    const kinds = [effects.M, effects.V, effects.N].filter((values) => values.some((value) => value !== 0));
    if (kinds.length === 0) kinds.push(effects.M);
    const known = rules.map(() => new Map<Placement['key'], ActionState['combination']>());
    return effects.places.map(({ element, x }, s) => {
        const states: ActionState[] = [];
        const offset = s * effects.cases;
        const taken = new Set<ActionState['combination']>();
        rules.forEach((rule, r) => {
            for (const values of kinds) {
                const { most, least } = place(rule, values, offset);
                for (const choice of [most, least]) {
                    let combination = known[r]!.get(choice.key);
                    if (!combination) known[r]!.set(choice.key, combination = combine(rule, choice.present));
                    if (taken.has(combination)) continue;
                    taken.add(combination);
                    states.push({
                        combination,
                        N: combined(rule, choice, permanent.N[s]!, effects.N, offset),
                        V: combined(rule, choice, permanent.V[s]!, effects.V, offset),
                        M: combined(rule, choice, permanent.M[s]!, effects.M, offset)
                    });
                }
            }
        });
        return { x, segment: mesh.elements[element]!.segment, states };
    });
}

export function envelope(stations: readonly Station[], of: (state: ActionState) => number): DiagramPoint[] {
    return stations.map(({ x, states }) => {
        let [min, max] = [Infinity, -Infinity];
        for (const state of states) {
            min = Math.min(min, of(state));
            max = Math.max(max, of(state));
        }
        return { x, min, max };
    });
}
