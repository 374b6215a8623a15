/** Says in words what can move because nothing holds it. */
import type { Finding } from '../../../language/src/model.js';
import { nodeAt, type Mesh, type PieceMesh } from './mesh.js';
import { supportsInOrder } from './spans.js';

/** One finding a culprit; `motions` are free displacements by degree of freedom, of which the solver found each by itself. */
export function mechanismFindings(mesh: Mesh, motions: readonly Float64Array[]): Finding[] {
    const found = new Map<string, Finding>();
    for (const motion of motions) {
        const moving = mesh.pieces.filter((piece) => moves(piece, motion));
        const loose = moving.filter(({ piece: { member } }) => holdPlaces(member) <= 1);
        const findings = loose.length > 0
            ? loose.map(({ piece: { member } }) => tell(member.name, member.nameSource, loosely(member)))
            : [tell(names(moving), moving[0]!.piece.member.nameSource, together(moving))];
        for (const finding of findings) found.set(finding.message, finding);
    }
    return [...found.values()];
}

type Member = PieceMesh['piece']['member'];

function holdPlaces(member: Member): number {
    return new Set(member.supports.map((support) => support.at.value)).size;
}

function loosely(member: Member): string {
    const support = supportsInOrder(member)[0];
    if (!support) return `${member.name} is held nowhere: it has no support`;
    if (member.kind === 'post') return `${member.name} can fall over about ${support.on}: nothing holds its head`;
    return `${member.name} can rotate about ${support.on}: nothing holds its other end`;
}

function together(moving: readonly PieceMesh[]): string {
    if (moving.length === 1) return `${names(moving)} can move: its supports do not hold it in every direction`;
    return `${names(moving)} rest on each other and nothing else holds them: they can move together`;
}

function names(pieces: readonly PieceMesh[]): string {
    const list = pieces.map(({ piece }) => piece.member.name);
    return list.length < 2 ? list.join('') : `${list.slice(0, -1).join(', ')} and ${list.at(-1)}`;
}

function moves({ nodes, piece: { member } }: PieceMesh, motion: Float64Array): boolean {
    // The dof that stands for a shared movement is the carrier's: a turn shows only in what it moves.
    const ends = [0, member.length.value].map((x) => nodes[nodeAt(nodes, x)]!);
    const greatest = motion.reduce((max, value) => Math.max(max, Math.abs(value)), 0);
    return ends.some(({ u, v, r }) => [u, v, r].some((dof) => Math.abs(motion[dof]!) > 1e-6 * greatest));
}

function tell(_subject: string, source: Finding['source'], message: string): Finding {
    return { severity: 'error', code: 'mechanism', message, source };
}
