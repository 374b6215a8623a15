import * as ast from '../generated/ast.js';
import type { FlitchSection, Given, PliesSection, RectangularSection, RolledSection, Section } from '../model.js';
import type { Quantity } from '../quantity.js';
import { evaluateBolts } from './bolts.js';
import { evaluateButts } from './butts.js';
import type { Context } from './context.js';
import { fail, source } from './context.js';
import { steelOf } from './fasteners.js';
import { evidenceOf, wholeNumber } from './inputs.js';
import { notComputed } from './not-computed.js';
import { sizeSides } from './sizes.js';

export const rectangleOf = (section: Section | undefined): RectangularSection | undefined => (section?.shape === 'rectangle' ? section : undefined);

/** Undefined where the section is wrong; then that is reported. */
export function sectionOf(context: Context, member: ast.Member, material: 'timber' | 'steel' | undefined, length: number | undefined): Section | undefined {
    const node = member.statements.find(statement => ast.isSectionStatement(statement) || ast.isPlies(statement) || ast.isFlitch(statement));
    const leaves = ast.isPlies(node) || ast.isFlitch(node);
    reportLoneParts(context, member, leaves, ast.isPlies(node));
    if (node === undefined) {
        return fail(context, 'no-section', `${member.name} has no section: say one, such as section 75 x 200 mm`, source(context, member, 'name'));
    }
    if (leaves && material === 'steel') {
        return fail(context, 'wrong-material', `${member.name} is of steel: leaves are of timber`, source(context, node));
    }
    switch (node.$type) {
        case 'SectionStatement': return material === 'steel' || node.rolled !== undefined ? rolled(context, member, node, material) : rectangle(context, member, node);
        case 'Plies': return plies(context, member, node, length);
        case 'Flitch': return flitch(context, member, node, length);
    }
}

function reportLoneParts(context: Context, member: ast.Member, leaves: boolean, plies: boolean): void {
    const lone = member.statements.find(statement => (ast.isBolts(statement) && !leaves) || (ast.isPly(statement) && !plies));
    if (lone !== undefined) {
        fail(context, 'no-leaves', `${member.name} has no ${ast.isPly(lone) ? 'plies to break' : 'leaves to bolt together'}: say them, such as plies 3 of 63 x 200 mm`, source(context, lone));
    }
}

function rectangle(context: Context, member: ast.Member, node: ast.SectionStatement): RectangularSection | undefined {
    const path = `${member.name}.section`;
    const sides = sizeSides(context, node.size, 2);
    if (sides === undefined) {
        return undefined;
    }
    sayInLedger(context, path, sizeText(sides), node.size!, node.evidence);
    const [breadth, depth] = sidesOf(context, node.size!, sides, node.evidence, [`${path}.breadth`, `${path}.depth`]);
    return { shape: 'rectangle', breadth: breadth!, depth: depth! };
}

function sidesOf(context: Context, size: ast.Size, sides: readonly Quantity[], evidence: ast.Evidence | undefined, paths: readonly string[]): readonly Given[] {
    return paths.map((path, i) => {
        context.paths.add(path);
        return { ...sides[i]!, evidence: evidenceOf(evidence), source: source(context, size.sides[i]!), path };
    });
}

/** A section is told of in one line, and varied by its sides. */
function sayInLedger(context: Context, path: string, value: string, at: ast.Size | ast.Statement, evidence: ast.Evidence | undefined): Given<string> {
    const told: Given<string> = { value, evidence: evidenceOf(evidence), source: source(context, at), path };
    context.inputs.push(told);
    return told;
}

const numbers = (sides: readonly Quantity[], sign: string) => sides.map(side => Number(side.value.toPrecision(6))).join(` ${sign} `);
/** `190 × 240 mm`. */
const sizeText = (sides: readonly Quantity[]): string => `${numbers(sides, '×')} mm`;

function rolled(context: Context, member: ast.Member, node: ast.SectionStatement, material: 'timber' | 'steel' | undefined): RolledSection | undefined {
    const sides = node.rolled === undefined ? sizeSides(context, node.size, 2) : undefined;
    if (node.rolled === undefined && sides === undefined) {
        return undefined;
    }
    const designation = node.rolled === undefined ? numbers(sides!, 'x') : `${node.rolled.series} ${node.rolled.designation}`;
    if (material === 'timber') {
        return fail(context, 'wrong-material', `${designation} is a rolled section of steel, and ${member.name} is of timber`, source(context, node));
    }
    const at = source(context, node);
    notComputed(context, 'steel', `${member.name}.section`, [member.name], at);
    return { shape: 'rolled', designation, given: sayInLedger(context, `${member.name}.section`, designation, node, node.evidence), source: at };
}

function plies(context: Context, member: ast.Member, node: ast.Plies, length: number | undefined): PliesSection | undefined {
    const path = `${member.name}.plies`;
    const count = wholeNumber(context, node.count, node, 'count');
    const sides = sizeSides(context, node.size, 2);
    const leaf = sides && length !== undefined ? { breadth: sides[0]!.value, depth: sides[1]!.value, length } : undefined;
    if (sides !== undefined) {
        sayInLedger(context, `${member.name}.section`, `${count} of ${sizeText(sides)}`, node, node.evidence);
    }
    const butts = evaluateButts(context, member, count, length);
    const bolts = evaluateBolts(context, member, leaf);
    if (sides === undefined || count === undefined) {
        return undefined;
    }
    notComputed(context, 'plies', path, [member.name], source(context, node));
    const [breadth, depth] = sidesOf(context, node.size, sides, node.evidence, [`${path}.breadth`, `${path}.depth`]);
    return { shape: 'plies', count, breadth: breadth!, depth: depth!, butts, bolts, source: source(context, node) };
}

function flitch(context: Context, member: ast.Member, node: ast.Flitch, length: number | undefined): FlitchSection | undefined {
    const path = `${member.name}.flitch`;
    const leaves = wholeNumber(context, node.count, node, 'count');
    const plates = wholeNumber(context, node.plates, node, 'plates');
    const sides = sizeSides(context, node.size, 2);
    const plate = sizeSides(context, node.plate, 2);
    const steel = steelOf(context, node.grade, node, 'grade', 'the plate');
    const bolts = evaluateBolts(context, member, sides && length !== undefined ? { breadth: sides[0]!.value, depth: sides[1]!.value, length } : undefined);
    if (sides === undefined || plate === undefined || steel === undefined || leaves === undefined || plates === undefined) {
        return undefined;
    }
    notComputed(context, 'flitch', path, [member.name], source(context, node));
    sayInLedger(context, `${member.name}.section`, `${leaves} of ${sizeText(sides)} with ${plates} of ${sizeText(plate)} ${steel}`, node, node.evidence);
    const [breadth, depth] = sidesOf(context, node.size, sides, node.evidence, [`${path}.breadth`, `${path}.depth`]);
    const [thickness, plateDepth] = sidesOf(context, node.plate, plate, node.evidence, [`${path}.thickness`, `${path}.plate`]);
    return {
        shape: 'flitch', leaves, breadth: breadth!, depth: depth!, plates, thickness: thickness!, plateDepth: plateDepth!,
        steel: { value: steel, evidence: evidenceOf(node.evidence), source: source(context, node, 'grade'), path: `${path}.steel` },
        bolts, source: source(context, node)
    };
}
