/** Says in words what can move because nothing holds it. */
import type { Member } from '../../../language/src/model.js';
import type { Mesh, PieceMesh } from './mesh.js';
import { problem, type Problem } from './problems.js';
import { supportsInOrder } from './spans.js';
import type { Standing } from './structure.js';

/** `motions` are displacements without resistance, by degree of freedom, as the solver found them in a stage. */
export function mechanismProblems(mesh: Mesh, motions: readonly Float64Array[], standing: Standing, stage: string | null): Problem[] {
    const where = stage === null ? '' : ` (stage ${stage})`;
    return distinct(motions.flatMap((motion) => {
        const moving = mesh.pieces.flatMap((piece, index) => (standing.pieces[index] && moves(piece, motion) ? [index] : []));
        const member = (index: number): Member => mesh.pieces[index]!.piece.member;
        // Whoever rests on a loose member moves with it, but is not to blame.
        const loose = moving.filter((index) => holdsOf(mesh, index, standing) <= 1);
        return loose.length > 0
            ? loose.map((index) => mechanism(member(index), `${loosely(member(index))}${where}`))
            : moving.map((index) => mechanism(member(index), `${together(moving.map(member))}${where}`));
    }));
}

/** At how many stations supports, hangers and props hold a member. */
function holdsOf({ frame }: Mesh, index: number, { hangers, props }: Standing): number {
    return new Set([
        ...frame.pieces[index]!.member.supports.map(({ at }) => at.value),
        ...frame.hangers.flatMap(({ hanger, lower, upper }, i) =>
            (!hangers[i] ? [] : lower === index ? [hanger.carriesAt.value] : upper === index ? [hanger.fromAt.value] : [])),
        ...frame.props.flatMap(({ piece, at }, i) => (props[i] && piece === index ? [at] : []))
    ]).size;
}

/** Members that carry each other at one place: the force between them has no end. */
export function circleProblems(mesh: Mesh): Problem[] {
    return distinct(mesh.circles.flatMap((pair) => {
        const members = pair.map((index) => mesh.pieces[index]!.piece.member);
        const names = members.map(({ name }) => name).sort().join(' and ');
        return members.map((member) => mechanism(member, `${names} carry each other at one place: nothing holds them there`));
    }));
}

function distinct(problems: readonly Problem[]): Problem[] {
    const same = (a: Problem, b: Problem): boolean => a.member === b.member && a.finding.message === b.finding.message;
    return problems.filter((one, i) => problems.findIndex((other) => same(one, other)) === i);
}

function mechanism(member: Member, message: string): Problem {
    return problem(member, 'mechanism', message, member.nameSource);
}

function loosely(member: Member): string {
    const support = supportsInOrder(member)[0];
    if (!support) return `${member.name} is held nowhere: it has no support`;
    if (member.kind === 'post') return `${member.name} can fall over about ${support.on}: nothing holds its head`;
    return `${member.name} can rotate about ${support.on}: nothing holds its other end`;
}

function together(moving: readonly Member[]): string {
    const list = moving.map(({ name }) => name);
    if (list.length === 1) return `${list[0]} can move: its supports do not hold it in every direction`;
    return `${list.slice(0, -1).join(', ')} and ${list.at(-1)} rest on each other and nothing else holds them`;
}

function moves({ strands }: PieceMesh, motion: Float64Array): boolean {
    const greatest = motion.reduce((max, value) => Math.max(max, Math.abs(value)), 0);
    return strands.some(({ nodes }) => nodes.some(({ u, v, r }) => [u, v, r].some((dof) => Math.abs(motion[dof]!) > 1e-6 * greatest)));
}
