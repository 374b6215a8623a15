import type { LangiumDocument } from 'langium';
import * as ast from '../generated/ast.js';
import { refusal } from '../lexing/lexer.js';
import type { Evaluation, Load, Model } from '../model.js';
import { checkParameters } from './arguments.js';
import { brokenMembers, spread, unsoundDeclarations, wordsOf } from './broken.js';
import type { Context } from './context.js';
import { attempt, fail, newContext, report, source } from './context.js';
import { expandUse } from './details.js';
import { evaluateExpression } from './expressions.js';
import { evaluateHanger } from './hangers.js';
import type { Include, ReadFile, ReadFiles } from './includes.js';
import { readFiles } from './includes.js';
import { evaluateAccess, evaluateJob, evaluateValues } from './job.js';
import { evaluateBreakEvens, nameLeftOut } from './left-out.js';
import { evaluateLoad } from './loads.js';
import { evaluateMaterial, evaluateWall } from './materials.js';
import { evaluateMember } from './members.js';
import { collectNames, reportDuplicates } from './names.js';
import { evaluateRequirement } from './requirements.js';
import { checkPresence } from './presence.js';
import { evaluateStage, withoutUnsound } from './stages.js';
import { evaluateSurvey } from './survey.js';
import { syntaxErrors } from './syntax.js';
import { findingsToTell } from './told.js';
import { checkUnusedValues } from './unused-values.js';

export interface EvaluateOptions {
    /** What the places of findings call the document; its address unless said. */
    readonly file?: string;
    /** Without it nothing that is included is read, and each include is named as not computed. */
    readonly include?: Include;
}

/** The model of what is sound in a document and those that it includes, and what is wrong with the rest. Never throws on bad input. */
export function evaluate(document: LangiumDocument, { file = document.uri.toString(), include }: EvaluateOptions = {}): Evaluation {
    const refused = refusal(document.textDocument.getText());
    if (refused !== undefined) {
        return nothing(file, 'not-read', refused);
    }
    try {
        return evaluateFiles(readFiles(document, file, include), include !== undefined);
    } catch (error) {
        if (error instanceof RangeError) {
            return nothing(file, 'too-deep', 'something in this file is nested too deep to be read');
        }
        throw error;
    }
}

function evaluateFiles(read: ReadFiles, reading: boolean): Evaluation {
    const main = read.files[0]!;
    const root: ast.Calculation = { ...main.root, declarations: [...read.declarations] };
    const context = newContext(new Map(read.files.map(one => [one.root, one.file])), collectNames(root));
    context.findings.push(...read.findings);
    const errors = read.files.flatMap(one => syntaxErrors(one.document.parseResult, one.document.textDocument.getText(), one.file));
    const unsound = new Set(read.files.flatMap(one => [...unsoundDeclarations(one.root, errors.filter(error => error.finding.source.file === one.file))]));
    const reasons = new Map<string, string>();
    const job = evaluateJob(context, main.root);
    reportIncludedJobs(context, read.files.slice(1));
    reportDuplicates(context);
    const values = evaluateValues(context, root);
    root.declarations.filter(ast.isLet).forEach(node => evaluateExpression(context, node.value?.value));

    const soundOf = <N extends ast.Declaration & { readonly name: string }, R>(nodes: readonly N[], step: (node: N) => R | undefined, onError: (node: N) => void): R[] =>
        nodes.filter(node => node.name).flatMap(node => {
            const { value, sound } = attempt(context, () => step(node));
            if (!sound || value === undefined || unsound.has(node)) {
                onError(node);
                return [];
            }
            return [value];
        });
    const badThings = new Set<string>();
    const materials = soundOf(root.declarations.filter(isMaterial), node => evaluateMaterial(context, node), node => badThings.add(node.name));
    const walls = soundOf(root.declarations.filter(ast.isWall), node => evaluateWall(context, node), node => badThings.add(node.name));
    root.declarations.filter(ast.isWall).filter(wall => wall.facts.some(fact => ast.isOfMaterial(fact) && badThings.has(fact.material?.$refText ?? '')))
        .forEach(wall => badThings.add(wall.name));
    const memberNodes = root.declarations.filter(ast.isMember);
    const members = soundOf(memberNodes, node => evaluateMember(context, node), node => reasons.set(node.name, 'it has an error'));
    memberNodes.forEach(node => dependOnBad(node, badThings, reasons));
    context.names.duplicates.forEach(({ again, first }) => [again, first].filter(ast.isMember).forEach(node => reasons.set(node.name, 'its name is given twice')));

    const loseMembers = (node: ast.Declaration, why: string) => wordsOf(node)
        .filter(word => ast.isMember(context.names.things.get(word)) && !reasons.has(word)).forEach(word => reasons.set(word, why));
    const loads = soundOf(root.declarations.filter(ast.isLoad), node => evaluateLoad(context, node), node => loseLoad(context, node, reasons));
    root.declarations.filter(ast.isDetail).forEach(node => checkParameters(context, node));
    const hangers = [
        ...soundOf(namedHangers(context, root), node => evaluateHanger(context, node, node.name), node => loseMembers(node, `hanger ${node.name} on it has an error`)),
        ...soundOf(root.declarations.filter(ast.isUse), node => expandUse(context, node, read.incomplete), node => loseMembers(node, `${node.name}, which uses it, has an error`)).flat()
    ];
    errors.flatMap(error => error.skipped).filter(word => ast.isMember(context.names.things.get(word)) && !reasons.has(word))
        .forEach(word => reasons.set(word, 'a line that could not be read names it'));
    const stages = root.declarations.filter(ast.isStage).filter(node => node.name).map(node => ({ node, ...attempt(context, () => evaluateStage(context, node)) }));
    const unsoundStages = stages.filter(({ node, sound }) => !sound || unsound.has(node));
    unsoundStages.forEach(({ node }) => loseMembers(node, `stage ${node.name}, which names it, has an error`));
    const events = stages.map(({ value }) => ({ ...value.stage, events: value.events }));
    const inOrder = unsoundStages.length > 0
        || attempt(context, () => checkPresence(context, events, members, hangers, [...memberNodes, ...hangers].map(node => node.name))).sound;
    if (!inOrder) {
        stages.forEach(({ node }) => loseMembers(node, 'the stages have an error'));
    }
    spread(root, unsound, reasons, hangers);
    const broken = brokenMembers(context, root, reasons);

    const requirements = root.declarations.filter(ast.isRequire).flatMap(node => evaluateRequirement(context, node) ?? []);
    const survey = evaluateSurvey(context, root);
    const access = evaluateAccess(context, root);
    nameLeftOut(context, root, reading);
    checkUnusedValues(context, root);
    evaluateBreakEvens(context, root, new Set(reasons.keys()));
    const soundMembers = members.filter(({ name }) => !reasons.has(name));
    const soundHangers = hangers.filter(({ carries, from }) => !reasons.has(carries) && !reasons.has(from));
    const model: Model = {
        file: main.file, files: read.files.map(one => one.file), job, values, materials, walls, members: soundMembers,
        loads: loads.filter((load: Load) => !reasons.has(load.member)), hangers: soundHangers,
        stages: stages.map(({ value }) => withoutUnsound(value.stage, soundMembers, soundHangers)),
        requirements, survey, access, notComputed: [...context.notComputed.values()], inputs: context.inputs
    };
    return { model, findings: findingsToTell(context, errors, unsound, main.file), broken };
}

function reportIncludedJobs(context: Context, included: readonly ReadFile[]): void {
    for (const job of included.flatMap(({ root }) => root.declarations.filter(ast.isJob))) {
        report(context, 'warning', 'included-job', 'this file is included in another job: the settings of its own are not used there', source(context, job, 'title'));
    }
}

function namedHangers(context: Context, root: ast.Calculation): readonly (ast.Hanger & { readonly name: string })[] {
    return root.declarations.filter(ast.isHanger).flatMap(node => (node.name === undefined
        ? fail(context, 'no-name', 'this hanger has no name: only in a detail may it go without, and is called as the use is', source(context, node)) ?? []
        : [node as ast.Hanger & { readonly name: string }]));
}

const isMaterial = (node: ast.Declaration): node is ast.Timber | ast.Steel | ast.Masonry => ast.isTimber(node) || ast.isSteel(node) || ast.isMasonry(node);

function dependOnBad(node: ast.Member, bad: ReadonlySet<string>, reasons: Map<string, string>): void {
    const used = node.statements.map(statement => (ast.isBearing(statement) ? statement.on : ast.isOfMaterial(statement) ? statement.material : undefined)?.$refText);
    const culprit = used.find(name => name !== undefined && bad.has(name));
    if (culprit !== undefined && !reasons.has(node.name)) {
        reasons.set(node.name, `${culprit}, which it needs, has an error`);
    }
}

/** A member whose load could not be read would seem safer than it is. Where the load stands may itself be what is broken. */
function loseLoad(context: Context, node: ast.Load, reasons: Map<string, string>): void {
    const named = node.parts.find(ast.isLoadOn)?.member?.$refText;
    for (const word of named === undefined ? wordsOf(node) : [named]) {
        if (ast.isMember(context.names.things.get(word)) && !reasons.has(word)) {
            reasons.set(word, `load ${node.name} on it has an error`);
        }
    }
}

function nothing(file: string, code: string, message: string): Evaluation {
    const source = { file, start: 0, end: 0, line: 1, column: 1 };
    return {
        model: {
            file, files: [file], job: { title: '', basis: 'EN1995', serviceClass: 2, serviceClassStated: false, combinations: '6.10', source },
            values: [], materials: [], walls: [], members: [], loads: [], hangers: [], stages: [], requirements: [], notComputed: [], inputs: []
        },
        findings: [{ severity: 'error', code, message, source }], broken: []
    };
}
