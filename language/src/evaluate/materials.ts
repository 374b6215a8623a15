import * as ast from '../generated/ast.js';
import type { Given, Masonry, Material, Steel, Timber, Wall } from '../model.js';
import type { Context } from './context.js';
import { fail, source } from './context.js';
import { aDensity, aLength, aDistance, aShare, aStress, consequential, evidenceOf, given } from './inputs.js';
import { resolve } from './names.js';
import { steelClasses, timberClasses } from './strength-classes.js';
import { failUnknown } from './unknown.js';

const timberProperties = ['fm_k', 'ft0_k', 'ft90_k', 'fc0_k', 'fc90_k', 'fv_k', 'E0_mean', 'E0_05', 'E90_mean', 'G_mean', 'rho_k', 'rho_mean'];
const steelProperties = ['fy', 'fu', 'E', 'rho'];

export function evaluateMaterial(context: Context, node: ast.Timber | ast.Steel | ast.Masonry): Material {
    switch (node.$type) {
        case 'Timber': return evaluateTimber(context, node);
        case 'Steel': return evaluateSteel(context, node);
        case 'Masonry': return evaluateMasonry(context, node);
    }
}

function evaluateTimber(context: Context, node: ast.Timber): Timber {
    const grade = gradeOf(context, node, timberClasses);
    if (grade !== undefined) {
        timberProperties.forEach(name => context.paths.add(`${node.name}.${name}`));
    }
    const properties = propertiesOf(context, node, timberProperties);
    const moisture = node.facts.find(ast.isMoisture);
    if (grade === undefined && Object.keys(properties).length === 0 && !node.facts.some(fact => !ast.isMoisture(fact))) {
        fail(context, 'no-grade', `${node.name} has no grade: say one, such as grade C18 (judged "slow grown")`, source(context, node, 'name'));
    }
    return {
        kind: 'timber', name: node.name, grade, properties,
        moisture: moisture && given(context, moisture.value, `${node.name}.moisture`, aShare), source: source(context, node)
    };
}

function evaluateSteel(context: Context, node: ast.Steel): Steel {
    return {
        kind: 'steel', name: node.name, grade: gradeOf(context, node, steelClasses),
        properties: propertiesOf(context, node, steelProperties), source: source(context, node)
    };
}

function evaluateMasonry(context: Context, node: ast.Masonry): Masonry {
    const strength = node.facts.find(ast.isStrength);
    const unit = node.facts.find(ast.isUnit);
    const unitStrength = unit && consequential(context, given(context, unit.strength, `${node.name}.unit`, aStress));
    const mortar = unit && consequential(context, given(context, unit.mortar, `${node.name}.mortar`, aStress));
    return {
        kind: 'masonry', name: node.name,
        fk: strength && consequential(context, given(context, strength.value, `${node.name}.fk`, aStress)),
        unit: unitStrength && mortar && { strength: unitStrength, mortar, kind: unit?.kind ?? 'clay' },
        source: source(context, node)
    };
}

const factsOf = (node: ast.Timber | ast.Steel): readonly (ast.Grade | ast.Moisture | ast.Properties)[] => node.facts;

function gradeOf(context: Context, node: ast.Timber | ast.Steel, classes: readonly string[]): Given<string> | undefined {
    const grade = factsOf(node).find(ast.isGrade);
    if (grade?.name === undefined) {
        return undefined;
    }
    const at = source(context, grade, 'name');
    if (!classes.includes(grade.name)) {
        return failUnknown(context, 'unknown-grade', `unknown strength class '${grade.name}'`, at, { word: grade.name, among: classes });
    }
    return consequential(context, { value: grade.name, evidence: evidenceOf(grade.evidence), source: at, path: `${node.name}.grade` });
}

function propertiesOf(context: Context, node: ast.Timber | ast.Steel, known: readonly string[]): Readonly<Record<string, Given>> {
    const found: Record<string, Given> = {};
    for (const entry of factsOf(node).filter(ast.isProperties).flatMap(block => block.entries)) {
        if (!known.includes(entry.name)) {
            failUnknown(context, 'unknown-property', `unknown property '${entry.name}'`, source(context, entry, 'name'),
                { word: entry.name, among: known, otherwise: `: known are ${known.join(', ')}` });
            continue;
        }
        const value = consequential(context, given(context, entry.value, `${node.name}.${entry.name}`, entry.name.startsWith('rho') ? aDensity : aStress));
        if (value !== undefined) {
            found[entry.name] = value;
        }
    }
    return found;
}

export function evaluateWall(context: Context, node: ast.Wall): Wall {
    const of = node.facts.find(ast.isOfMaterial);
    const thickness = node.facts.find(ast.isThickness);
    const height = node.facts.find(ast.isHeight);
    return {
        name: node.name,
        material: of && resolve(context, of.material, of, ast.isMasonry, 'a masonry')?.name,
        thickness: thickness && given(context, thickness.value, `${node.name}.thick`, aLength),
        height: height && given(context, height.value, `${node.name}.height`, aDistance),
        source: source(context, node)
    };
}
