import * as ast from '../generated/ast.js';
import type { FloorVibration, Given, Member, Section } from '../model.js';
import * as dim from '../quantity.js';
import type { Context } from './context.js';
import { reportBoltsNearButts } from './bolts-near-butts.js';
import { reportButts } from './butts.js';
import { fail, source } from './context.js';
import { evaluateHoles } from './holes.js';
import type { Expectation } from './inputs.js';
import { aDepth, aDistance, aLength, aShare, anAngle, consequential, evidenceOf, given, single, unsaid } from './inputs.js';
import { resolve } from './names.js';
import { notComputed } from './not-computed.js';
import { rectangleOf, sectionOf } from './sections.js';
import { evaluateSplices } from './splices.js';
import { steelClasses, timberClasses } from './strength-classes.js';
import { evaluateSupports } from './supports.js';
import { evaluateLosses, evaluateNotches } from './weakenings.js';

/** Far more than a real member has; looking at overlaps takes time by their square. */
const mostStatements = 500;

/** Undefined where something that every member needs is missing or wrong; then that is reported. */
export function evaluateMember(context: Context, node: ast.Member): Member | undefined {
    const statements = node.statements;
    if (statements.length > mostStatements) {
        return fail(context, 'too-many-statements', `${node.name} has ${statements.length} statements: at most ${mostStatements} are read`, source(context, node, 'name'));
    }
    reportRepeated(context, node);
    const material = materialOf(context, node);
    const length = lengthOf(context, node);
    const section = sectionOf(context, node, material?.kind, length?.value);
    const rectangle = rectangleOf(section);
    const slopes = statements.find(ast.isSlopes);
    const slope = slopes && single(context, slopes.value, anAngle);
    if (slope !== undefined && Math.abs(slope.value) >= Math.PI / 2) {
        fail(context, 'too-steep', 'a slope is less than 90 deg: a post says stands', source(context, slopes!.value.value));
    }
    const restrained = statements.find(ast.isRestrained);
    const precamber = statements.find(ast.isPrecamber);
    const post = statements.some(ast.isStands);
    const rest = {
        supports: evaluateSupports(context, node, length?.value),
        losses: evaluateLosses(context, node, length?.value, rectangle),
        notches: evaluateNotches(context, node, length?.value, rectangle),
        restraint: restrained && restraintOf(context, node, restrained),
        precamber: precamber && given(context, precamber.value, `${node.name}.precamber`, aDepth),
        holes: evaluateHoles(context, node, length?.value, section?.shape === 'rolled' ? undefined : section?.depth.value),
        splices: evaluateSplices(context, node, length?.value, material?.kind === 'steel' ? material.name : undefined),
        floor: floorOf(context, node)
    };
    if (section?.shape === 'plies') {
        reportButts(context, node, section, rest.supports);
        reportBoltsNearButts(context, node, section);
    }
    reportWeakLeaves(context, node, section);
    if (rest.supports.length === 0 && !node.statements.some(ast.isBearing) && !context.names.hung.has(node.name)) {
        fail(context, 'no-support', `${node.name} has no support: say what it is on, such as on north at 0.10 m bearing 100 mm`, source(context, node, 'name'));
    }
    return material && section && length && {
        name: node.name, ...(node.title !== undefined && { title: node.title }),
        kind: post ? 'post' : 'beam', slope: post ? Math.PI / 2 : slope?.value ?? 0,
        material: material.name, section, length, ...rest,
        selfWeight: !statements.some(ast.isNoSelfWeight), systemStrength: statements.some(ast.isSystemStrength),
        source: source(context, node), nameSource: source(context, node, 'name')
    };
}

const isMaterial = (node: unknown): node is ast.Timber | ast.Steel => ast.isTimber(node) || ast.isSteel(node);

function materialOf(context: Context, node: ast.Member): { readonly name: string; readonly kind: 'timber' | 'steel' } | undefined {
    const of = node.statements.find(ast.isOfMaterial);
    if (of === undefined) {
        return fail(context, 'no-material', `${node.name} has no material: say one, such as of C24`, source(context, node, 'name'));
    }
    const name = of.material?.$refText;
    if (name !== undefined && !context.names.things.has(name)) {
        const kind = timberClasses.includes(name) ? 'timber' : steelClasses.includes(name) ? 'steel' : undefined;
        if (kind !== undefined) {
            consequential(context, { value: name, evidence: evidenceOf(of.evidence), source: source(context, of, 'material'), path: `${node.name}.grade` });
            return { name, kind };
        }
    }
    const material = resolve(context, of.material, of, isMaterial, 'a timber or a steel', [...timberClasses, ...steelClasses]);
    return material && { name: material.name, kind: material.$type === 'Steel' ? 'steel' : 'timber' };
}

function lengthOf(context: Context, node: ast.Member): Given | undefined {
    const statement = node.statements.find(ast.isLengthStatement);
    return statement === undefined ? fail(context, 'no-length', `${node.name} has no length: say one, such as length 4.90 m`, source(context, node, 'name'))
        : given(context, statement.value, `${node.name}.length`, aDistance);
}

function restraintOf(context: Context, node: ast.Member, statement: ast.Restrained): Given | undefined {
    return statement.spacing === undefined
        ? unsaid(0, `${node.name}.restrained`, source(context, statement))
        : given(context, statement.spacing, `${node.name}.restrained`, aLength);
}

/** What is lost of a section of many parts is not known part by part. */
function reportWeakLeaves(context: Context, node: ast.Member, section: Section | undefined): void {
    if (section !== undefined && section.shape !== 'rectangle') {
        node.statements.filter(statement => ast.isLoss(statement) || ast.isNotch(statement))
            .forEach(cut => notComputed(context, 'weakenings', `${node.name}.${cut.$type.toLowerCase()}`, [node.name], source(context, cut)));
    }
}

const floorFacts: Readonly<Record<ast.FloorFact['kind'], Expectation>> = {
    width: aDistance, spacing: aLength, mass: { dimensions: [dim.massPerArea], usual: 'kg/m2', sign: 'positive' },
    deck: { dimensions: [dim.moment], usual: 'kNm2/m', sign: 'not negative' }, damping: { ...aShare, sign: 'positive', most: 1 }
};

function floorOf(context: Context, node: ast.Member): FloorVibration | undefined {
    const floor = node.statements.find(ast.isFloor);
    if (floor === undefined) {
        return undefined;
    }
    const fact = (kind: ast.FloorFact['kind']): Given | undefined => {
        const found = floor.facts.find(item => item.kind === kind);
        return found && given(context, found.value, `${node.name}.floor.${kind}`, floorFacts[kind]);
    };
    const at = source(context, floor);
    const usualDamping = unsaid(0.01, `${node.name}.floor.damping`, at, dim.ratio);
    const [width, spacing, massPerArea, transverseStiffness] = [fact('width'), fact('spacing'), fact('mass'), fact('deck')];
    const damping = floor.facts.some(item => item.kind === 'damping') ? fact('damping') : usualDamping;
    const missing = (['width', 'spacing', 'mass', 'deck'] as const).filter(kind => !floor.facts.some(item => item.kind === kind));
    if (missing.length > 0) {
        return fail(context, 'floor-incomplete', `this floor lacks its ${missing.join(', ')}`, at);
    }
    return width && spacing && massPerArea && transverseStiffness && damping && { width, spacing, massPerArea, transverseStiffness, damping, source: at };
}

const once: readonly string[] = ['OfMaterial', 'SectionStatement', 'Plies', 'Flitch', 'LengthStatement', 'Restrained', 'Precamber', 'Slopes', 'Stands', 'Floor', 'Fire'];

function reportRepeated(context: Context, node: ast.Member): void {
    const seen = new Set<string>();
    for (const statement of node.statements) {
        if (once.includes(statement.$type) && seen.has(statement.$type)) {
            fail(context, 'said-twice', `${node.name} says this twice`, source(context, statement));
        }
        seen.add(statement.$type);
    }
}

