/** Members and hangers over all values of bands: what is drawn is of the corner of the worst check, amounts are of all. */
import type { DiagramPoint, Diagrams } from '../analysis/actions.js';
import type { Amount, AmountRange, CheckResult, HangerResult, LeafResult, MemberResult, Reaction } from '../results.js';

type Staged = { readonly name: string; readonly stage: string | null };
const isSame = (a: Staged) => (b: Staged): boolean => a.name === b.name && a.stage === b.stage;

/**
 * @param one of some corner, for its name and stage
 * @param everywhere results of all members with all values
 * @param checks its own, worst first
 * @param at results of members where a check is worst
 */
export function memberOver(
    one: MemberResult, everywhere: readonly MemberResult[], checks: readonly CheckResult[], at: (check: CheckResult) => readonly MemberResult[]
): MemberResult {
    const all = everywhere.filter(isSame(one));
    const [worst] = checks;
    const drawn = (worst && at(worst).find(isSame(one))) ?? one;
    const bent = all.reduce((most, other) => (1 / other.deflection.ratio > 1 / most.deflection.ratio ? other : most), drawn);
    return {
        ...drawn,
        weight: greatest(all.map(({ weight }) => weight)),
        moment: range(all.map(({ moment }) => moment)),
        shear: range(all.map(({ shear }) => shear)),
        reactions: drawn.reactions.map((reaction, i) => reactionOver(reaction, all.map(({ reactions }) => reactions[i]))),
        deflection: {
            ratio: bent.deflection.ratio,
            instant: greatest(all.map(({ deflection }) => deflection.instant)),
            final: greatest(all.map(({ deflection }) => deflection.final)),
            total: greatest(all.map(({ deflection }) => deflection.total))
        },
        ...(drawn.leaves && { leaves: drawn.leaves.map((leaf, i) => leafOver(leaf, all.flatMap(({ leaves }) => leaves?.[i] ?? []))) }),
        diagrams: diagramsOver(drawn.diagrams, all.map(({ diagrams }) => diagrams)),
        worst: worst?.id ?? drawn.worst,
        ...(worst?.corner && { corner: worst.corner })
    };
}

export function hangerOver(one: HangerResult, everywhere: readonly HangerResult[], [worst]: readonly CheckResult[]): HangerResult {
    return { ...one, force: range(everywhere.filter(isSame(one)).map(({ force }) => force)), worst: worst?.id ?? one.worst };
}

function leafOver(leaf: LeafResult, all: readonly LeafResult[]): LeafResult {
    return {
        ...leaf, moment: range(all.map(({ moment }) => moment)), shear: range(all.map(({ shear }) => shear)), diagrams: diagramsOver(leaf.diagrams, all.map(({ diagrams }) => diagrams)),
        ...(leaf.deflection && { deflection: { instant: greatest(all.flatMap(one => one.deflection?.instant ?? [])), final: greatest(all.flatMap(one => one.deflection?.final ?? [])) } })
    };
}

function reactionOver(reaction: Reaction, all: readonly (Reaction | undefined)[]): Reaction {
    return { ...reaction, ...range(all.flatMap(one => (one?.support === reaction.support ? [one] : []))) };
}

function range(all: readonly AmountRange[]): AmountRange {
    const [first] = all;
    return { min: { ...first!.min, value: Math.min(...all.map(({ min }) => min.value)) }, max: { ...first!.max, value: Math.max(...all.map(({ max }) => max.value)) } };
}

/** By its size. */
function greatest(all: readonly Amount[]): Amount {
    return all.reduce((most, one) => (Math.abs(one.value) > Math.abs(most.value) ? one : most));
}

/** Those that have the stations of what is drawn; others are left out of the diagrams. */
function diagramsOver(drawn: Diagrams, all: readonly Diagrams[]): Diagrams {
    const over = (name: keyof Diagrams): readonly DiagramPoint[] => {
        const fitting = all.map(diagrams => diagrams[name]).filter(points => points.length === drawn[name].length && points.every(({ x }, i) => x === drawn[name][i]!.x));
        return drawn[name].map(({ x }, i) => ({ x, min: Math.min(...fitting.map(points => points[i]!.min)), max: Math.max(...fitting.map(points => points[i]!.max)) }));
    };
    return { N: over('N'), V: over('V'), M: over('M'), instant: over('instant'), final: over('final') };
}
