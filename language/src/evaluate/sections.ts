import * as ast from '../generated/ast.js';
import type { OtherSection, RectangularSection, Section } from '../model.js';
import type { Quantity } from '../quantity.js';
import type { Context } from './context.js';
import { fail, notComputed, source } from './context.js';
import { consequential, evidenceOf, wholeNumber } from './inputs.js';
import { sizeSides } from './sizes.js';

export const rectangleOf = (section: Section | undefined): RectangularSection | undefined => (section?.shape === 'rectangle' ? section : undefined);

/** The member's section; anything but a rectangle of timber is named as not computed. */
export function sectionOf(context: Context, member: ast.Member, steel: boolean): Section | undefined {
    const node = member.statements.find(statement => ast.isSectionStatement(statement) || ast.isPlies(statement) || ast.isFlitch(statement));
    switch (node?.$type) {
        case 'SectionStatement': return steel || node.rolled !== undefined ? rolled(context, member, node) : rectangle(context, member, node);
        case 'Plies': return builtUp(context, member, node, 'plies', 'members built up of leaves are not computed in this version');
        case 'Flitch': return builtUp(context, member, node, 'flitch', 'flitch beams are not computed in this version');
        default: return fail(context, 'no-section', `${member.name} has no section: say one, such as section 75 x 200 mm`, source(context, member, 'name'));
    }
}

function rectangle(context: Context, member: ast.Member, node: ast.SectionStatement): RectangularSection | undefined {
    const sides = sizeSides(context, node.size, 2);
    const evidence = evidenceOf(node.evidence);
    const path = `${member.name}.section`;
    context.paths.add(path);
    if (sides === undefined) {
        return undefined;
    }
    const at = source(context, node.size!);
    const side = (index: number, name: string) => ({ value: sides[index]!.value, evidence, source: source(context, node.size!.sides[index]!), path: `${path}.${name}` });
    consequential<string>(context, { value: sizeText(sides), evidence, source: at, path });
    return { shape: 'rectangle', breadth: side(0, 'breadth'), depth: side(1, 'depth') };
}

/** `190 × 240 mm`. */
function sizeText(sides: readonly Quantity[]): string {
    return `${sides.map(side => Number(side.value.toPrecision(6))).join(' × ')} mm`;
}

function rolled(context: Context, member: ast.Member, node: ast.SectionStatement): OtherSection | undefined {
    const sides = node.rolled === undefined ? sizeSides(context, node.size, 2) : undefined;
    if (node.rolled === undefined && sides === undefined) {
        return undefined;
    }
    const designation = node.rolled === undefined ? sizeText(sides!) : `${node.rolled.series} ${node.rolled.designation}`;
    const at = source(context, node);
    notComputed(context, `${member.name}.section`, 'steel members are not computed in this version', [member.name], at);
    return { shape: 'rolled', designation, source: at };
}

function builtUp(context: Context, member: ast.Member, node: ast.Plies | ast.Flitch, shape: 'plies' | 'flitch', why: string): OtherSection | undefined {
    wholeNumber(context, node.count, node, 'count');
    const sides = sizeSides(context, node.size, 2);
    if (node.$type === 'Flitch') {
        wholeNumber(context, node.plates, node, 'plates');
        sizeSides(context, node.plate, 2);
    }
    if (sides === undefined) {
        return undefined;
    }
    const at = source(context, node);
    notComputed(context, `${member.name}.${shape}`, why, [member.name], at);
    consequential<string>(context, { value: `${node.count} of ${sizeText(sides)}`, evidence: evidenceOf(node.evidence), source: at, path: `${member.name}.section` });
    return { shape, designation: `${node.count} × ${sizeText(sides)}`, source: at };
}
