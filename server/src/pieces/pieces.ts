/** What is carried: every piece of every member, with its mark, length and mass. */
import type { Member, Model, SourceRef } from '../../../language/src/model.js';
import { tidy } from '../assemble/amounts.js';
import { subjectsOf, type Subject } from '../assemble/subjects.js';
import { createParameters } from '../catalog/parameters.js';
import { steelNamed } from '../catalog/steel-material.js';
import { withWater } from './moisture.js';

export interface Piece {
    readonly member: string;
    /** What is written on it: `T2` in one piece, `B1/a` between splices, `R1/2/b` of a leaf, `F1/plate 1`. */
    readonly mark: string;
    /** From 1, of a member of leaves or a flitch beam's timber. */
    readonly leaf?: number;
    /** As a person would say it: `63 × 200 mm C24`. */
    readonly description: string;
    /** mm from the member's start. */
    readonly from: number;
    readonly to: number;
    readonly length: number;
    /**
     * kg: at the timber's mean density with its moisture, losses, notches and holes not taken off.
     * Undefined where the material is not known.
     */
    readonly mass?: number;
    readonly source: SourceRef;
}

/** Of all members, in the order of the file. */
export function piecesOf(model: Model): readonly Piece[] {
    const { of } = subjectsOf(model, createParameters(model.values).parameters);
    return model.members.flatMap(member => piecesOfMember(member, of.get(member.name), model));
}

/** Pieces alike but for their places. */
interface Kind {
    /** `R1`, `R1/2`, `F1/plate 1`. */
    readonly mark: string;
    /** One letter a piece, even where there is only one. */
    readonly lettered: boolean;
    readonly leaf?: number;
    readonly description: string;
    /** kg/mm. */
    readonly perLength?: number;
    /** Stations where it is in two. */
    readonly breaks: readonly number[];
}

function piecesOfMember(member: Member, subject: Subject | undefined, model: Model): Piece[] {
    return kindsOf(member, subject, model).flatMap(({ mark, lettered, breaks, perLength, leaf, description }) => {
        const ends = [0, ...[...breaks].sort((a, b) => a - b), member.length.value];
        return ends.slice(1).map((to, i): Piece => {
            const from = ends[i]!;
            const length = to - from;
            return {
                member: member.name,
                mark: lettered || ends.length > 2 ? `${mark}/${letter(i)}` : mark,
                ...leaf !== undefined && { leaf },
                description, from, to, length,
                ...perLength !== undefined && { mass: perLength * length },
                source: member.nameSource
            };
        });
    });
}

/** `a` to `z`, then `aa`. */
function letter(index: number): string {
    return `${index >= 26 ? letter(Math.floor(index / 26) - 1) : ''}${String.fromCharCode(97 + index % 26)}`;
}

function kindsOf(member: Member, subject: Subject | undefined, model: Model): readonly Kind[] {
    const { name, section, splices } = member;
    const spliced = splices.map(({ at }) => at.value);
    if (section.shape === 'rolled') {
        const steel = subject?.kind === 'steel' ? subject.steel : undefined;
        return [{ mark: name, lettered: false, breaks: spliced, description: `${steel?.section.name ?? section.designation} ${steel?.steel.name ?? member.material}`, perLength: steel?.section.mass }];
    }
    const [b, h] = [section.breadth.value, section.depth.value];
    const density = subject?.kind === 'timber' ? withWater(subject.strength.rho_mean, moistureOf(member, model)) * 1e-9 : undefined;
    const timber = {
        description: `${tidy(b)} × ${tidy(h)} mm ${subject?.kind === 'timber' ? subject.strength.name : member.material}`,
        ...density !== undefined && { perLength: density * b * h }
    };
    const leaf = (number: number, breaks: readonly number[]): Kind => ({ mark: `${name}/${number}`, lettered: true, leaf: number, breaks, ...timber });
    switch (section.shape) {
        case 'rectangle': return [{ mark: name, lettered: false, breaks: spliced, ...timber }];
        case 'plies': return count(section.count).map(number =>
            leaf(number, section.butts.flatMap(({ leaf: broken, at }) => broken === number ? [at.value] : [])));
        case 'flitch': {
            const [t, height] = [section.thickness.value, section.plateDepth.value];
            const found = steelNamed(section.steel.value, t, model.materials);
            const plate = {
                lettered: false, breaks: [], description: `${tidy(t)} × ${tidy(height)} mm ${section.steel.value}`,
                ...'steel' in found && { perLength: found.steel.density * t * height }
            };
            return [
                ...count(section.leaves).map(number => leaf(number, [])),
                ...count(section.plates).map(number => ({ mark: `${name}/plate ${number}`, ...plate }))
            ];
        }
    }
}

const count = (n: number): readonly number[] => Array.from({ length: n }, (_, i) => i + 1);

function moistureOf({ material }: Member, { materials }: Model): number | undefined {
    const declared = materials.find(({ name }) => name === material);
    return declared?.kind === 'timber' ? declared.moisture?.value : undefined;
}
