/** A stage as one member sees it: the cases that do anything to it, numbered anew, so that cost grows with what is near. */
import type { UnitCase } from './actions.js';
import { negligible } from './effects.js';
import type { SolvedStage, SolvedStiffness } from './member-actions.js';
import { stateSize } from './unit-solutions.js';

export interface MemberView {
    readonly stage: SolvedStage;
    /** All cases of the group, and which of them the view's cases are. */
    readonly all: readonly UnitCase[];
    readonly ids: readonly number[];
}

export function viewOf(stage: SolvedStage, index: number): MemberView {
    const { units: { cases, parts } } = stage;
    const loading = new Set(parts.filter(({ piece }) => piece === index).map(({ unit }) => unit));
    const lot = restingOn(stage.instant, index);
    const sets = [stage.instant, ...stage.ultimate.map(({ solved }) => solved)];
    const active = cases.filter(({ id }) => loading.has(id) || sets.some((solved) => lot.some((piece) => acts(solved, piece, id))));
    const ids = active.map(({ id }) => id);
    const renumbered = new Map(ids.map((id, i) => [id, i]));
    const kept = parts.flatMap(({ unit }, i) => (renumbered.has(unit) ? [i] : []));
    const narrowed = ({ mesh, solutions, scales }: SolvedStiffness): SolvedStiffness => ({
        mesh,
        solutions: { ofCases: ids.map((id) => solutions.ofCases[id]!), holdsOfParts: kept.map((i) => solutions.holdsOfParts[i]!) },
        scales: ids.map((id) => scales[id]!)
    });
    return {
        all: cases, ids,
        stage: {
            ...stage,
            units: {
                cases: active.map((unit, id) => ({ ...unit, id })),
                parts: kept.map((i) => ({ ...parts[i]!, unit: renumbered.get(parts[i]!.unit)! }))
            },
            instant: narrowed(stage.instant),
            ...(stage.final ? { final: narrowed(stage.final) } : {}),
            ultimate: stage.ultimate.map(({ solved, crept }) => ({ solved: narrowed(solved), crept }))
        }
    };
}

/** The member, and all that rests on it or on what rests on it: their loads may go right through it. */
function restingOn({ mesh }: SolvedStiffness, index: number): number[] {
    const found = new Set([index]);
    for (const piece of found) for (const bearer of mesh.frame.pieces[piece]!.bearers) found.add(bearer.piece);
    return [...found];
}

/** N, V or M at either end of any element. */
function acts({ mesh, solutions, scales }: SolvedStiffness, index: number, id: number): boolean {
    const { states } = solutions.ofCases[id]!;
    const { force, moment } = scales[id]!;
    return mesh.pieces[index]!.strands.some(({ elements }) => elements.some((element) => {
        const i = stateSize * element.id;
        const [N, V, M, along, down] = [states[i]!, states[i + 1]!, states[i + 2]!, states[i + 5]!, states[i + 6]!];
        const { length } = element;
        return Math.max(Math.abs(N), Math.abs(V), Math.abs(N - along * length), Math.abs(V - down * length)) > force * negligible
            || Math.max(Math.abs(M), Math.abs(M + (V - down * length / 2) * length)) > moment * negligible;
    }));
}
