/** What stands at one moment, as a factored system. */
import { stiffnessMatrix } from './element.js';
import { holdingOf, type Holding } from './holding.js';
import { linkBlock, type Link } from './links.js';
import type { Mesh } from './mesh.js';
import type { Order } from './solver/order.js';
import { factorise, type Block, type System } from './solver/system.js';

/** By index in the frame: 1 for what is there. */
export interface Standing {
    readonly pieces: Uint8Array;
    readonly hangers: Uint8Array;
    readonly props: Uint8Array;
}

/** Blocks of a mesh and what its supports hold: made once for all that may stand. */
export interface Kit {
    readonly mesh: Mesh;
    /** By element and by link. */
    readonly elements: readonly Block[];
    readonly links: readonly Block[];
    /** By element: the greatest entry of its matrix. */
    readonly stiffest: Float64Array;
    readonly holdings: readonly Holding[];
}

export interface Structure {
    readonly system: System;
    readonly held: Uint8Array;
    /** By element and by link: 1 for what is there. */
    readonly present: { readonly elements: Uint8Array; readonly links: Uint8Array };
}

/** `like` is the kit of the same mesh of other stiffness: what the supports hold is the same. */
export function kitOf(mesh: Mesh, like?: Kit): Kit {
    const links = mesh.pieces.map((): Link[] => []);
    for (const link of mesh.links) if (link.piece !== undefined) links[link.piece]!.push(link);
    const elements = mesh.elements.map((element): Block => ({ dofs: element.dofs, matrix: stiffnessMatrix(element) }));
    return {
        mesh, elements,
        stiffest: Float64Array.from(elements, ({ matrix }) => matrix.reduce((most, entry) => Math.max(most, Math.abs(entry)), 0)),
        links: mesh.links.map(linkBlock),
        holdings: like?.holdings ?? mesh.pieces.map((piece, p) => holdingOf(piece, links[p]!))
    };
}

function presentIn({ elements, owner, links, frame }: Mesh, { pieces, hangers }: Standing): Structure['present'] {
    const hasLink = ({ piece, hanger }: Link): boolean => {
        if (piece !== undefined) return pieces[piece] === 1;
        const { lower, upper } = frame.hangers[hanger!]!;
        return hangers[hanger!] === 1 && pieces[lower] === 1 && pieces[upper] === 1;
    };
    return {
        elements: Uint8Array.from(elements, ({ id, loose }) => (!loose && pieces[owner[id]!] ? 1 : 0)),
        links: Uint8Array.from(links, (link) => (hasLink(link) ? 1 : 0))
    };
}

/** `slack` are hangers that do not act as springs just now; `order` that of the same structure of other stiffness. */
export function structureOf(
    { mesh, elements, links, holdings }: Kit, standing: Standing,
    { slack, order }: { readonly slack?: ReadonlySet<number>; readonly order?: Order | undefined } = {}
): Structure {
    const present = presentIn(mesh, standing);
    const blocks: Block[] = [];
    const held = new Uint8Array(mesh.size).fill(1);
    const take = (block: Block): void => {
        blocks.push(block);
        for (const dof of block.dofs) held[dof] = 0;
    };
    elements.forEach((block, id) => { if (present.elements[id]) take(block); });
    links.forEach((block, index) => {
        const { hanger } = mesh.links[index]!;
        if (present.links[index] && !(hanger !== undefined && slack?.has(hanger))) take(block);
    });
    holdings.forEach(({ dofs, heads }, p) => {
        if (!standing.pieces[p]) return;
        for (const dof of dofs) held[dof] = 1;
        for (const { dof, by } of heads) if (standing.pieces[by]) held[dof] = 1;
    });
    mesh.props.forEach((dof, i) => { if (standing.props[i] && dof >= 0) held[dof] = 1; });
    return { system: factorise(mesh.size, held, blocks, order), held, present };
}
