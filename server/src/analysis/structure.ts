/** What stands at one moment, as a factored system. */
import { stiffnessMatrix } from './element.js';
import { holdingOf, type Holding } from './holding.js';
import { linkBlock } from './links.js';
import type { Mesh } from './mesh.js';
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
    readonly holdings: readonly Holding[];
}

export interface Structure {
    readonly system: System;
    readonly held: Uint8Array;
}

export function kitOf(mesh: Mesh): Kit {
    const links = mesh.pieces.map((_, p) => mesh.links.filter((link) => link.piece === p));
    return {
        mesh,
        elements: mesh.elements.map((element): Block => ({ dofs: element.dofs, matrix: stiffnessMatrix(element) })),
        links: mesh.links.map(linkBlock),
        holdings: mesh.pieces.map((piece, p) => holdingOf(piece, links[p]!))
    };
}

export function hasElement({ elements, owner }: Mesh, { pieces }: Standing, id: number): boolean {
    return !elements[id]!.loose && pieces[owner[id]!] === 1;
}

export function hasLink({ links, frame }: Mesh, { pieces, hangers }: Standing, index: number): boolean {
    const { piece, hanger } = links[index]!;
    if (piece !== undefined) return pieces[piece] === 1;
    const { lower, upper } = frame.hangers[hanger!]!;
    return hangers[hanger!] === 1 && pieces[lower] === 1 && pieces[upper] === 1;
}

/** `slack` are hangers that do not act as springs just now. */
export function structureOf({ mesh, elements, links, holdings }: Kit, standing: Standing, slack?: ReadonlySet<number>): Structure {
    const blocks: Block[] = [];
    const held = new Uint8Array(mesh.size).fill(1);
    const take = (block: Block): void => {
        blocks.push(block);
        for (const dof of block.dofs) held[dof] = 0;
    };
    elements.forEach((block, id) => { if (hasElement(mesh, standing, id)) take(block); });
    links.forEach((block, index) => {
        const { hanger } = mesh.links[index]!;
        if (hasLink(mesh, standing, index) && !(hanger !== undefined && slack?.has(hanger))) take(block);
    });
    holdings.forEach(({ dofs, heads }, p) => {
        if (!standing.pieces[p]) return;
        for (const dof of dofs) held[dof] = 1;
        for (const { dof, by } of heads) if (standing.pieces[by]) held[dof] = 1;
    });
    mesh.props.forEach((dof, i) => { if (standing.props[i] && dof >= 0) held[dof] = 1; });
    return { system: factorise(mesh.size, held, blocks), held };
}
