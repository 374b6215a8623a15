import type { LangiumDocument } from 'langium';
import * as ast from '../generated/ast.js';
import { refusal } from '../lexing/lexer.js';
import type { Evaluation, Finding, Load, Member, Model } from '../model.js';
import { brokenMembers, spread, unsoundDeclarations, wordsOf } from './broken.js';
import type { Context } from './context.js';
import { attempt, newContext } from './context.js';
import { evaluateExpression } from './expressions.js';
import { evaluateAccess, evaluateJob, evaluateValues } from './job.js';
import { evaluateLoad } from './loads.js';
import { evaluateMaterial, evaluateWall } from './materials.js';
import { evaluateMember } from './members.js';
import { collectNames, reportDuplicates } from './names.js';
import { evaluateBreakEvens, evaluateNotComputed } from './left-out.js';
import { evaluateRequirement } from './requirements.js';
import { checkUnusedValues } from './unused-values.js';
import { evaluateSurvey } from './survey.js';
import type { SyntaxError } from './syntax.js';
import { syntaxErrors } from './syntax.js';

/** So many findings are told for a file; one more says how many are left out. */
export const mostFindings = 200;

/**
 * The model of what is sound in a document, and what is wrong with the rest. Never throws.
 * `file` is what the places of findings call the document.
 */
export function evaluate(document: LangiumDocument, file: string = document.uri.toString()): Evaluation {
    const text = document.textDocument.getText();
    const refused = refusal(text);
    if (refused !== undefined) {
        return nothing(file, 'not-read', refused);
    }
    try {
        return evaluateRoot(document.parseResult.value as ast.Calculation, document, text, file);
    } catch (error) {
        if (error instanceof RangeError) {
            return nothing(file, 'too-deep', 'something in this file is nested too deep to be read');
        }
        throw error;
    }
}

function evaluateRoot(root: ast.Calculation, document: LangiumDocument, text: string, file: string): Evaluation {
    const context = newContext(file, collectNames(root));
    const errors = syntaxErrors(document.parseResult, text, file);
    const unsound = unsoundDeclarations(root, errors);
    const reasons = new Map<string, string>();
    const job = evaluateJob(context, root);
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
    const loads = soundOf(root.declarations.filter(ast.isLoad), node => evaluateLoad(context, node), node => loseLoad(context, node, reasons));
    errors.flatMap(error => error.skipped).filter(word => ast.isMember(context.names.things.get(word)) && !reasons.has(word))
        .forEach(word => reasons.set(word, 'a line that could not be read names it'));
    spread(root, unsound, reasons);
    const broken = brokenMembers(context, root, reasons);

    const requirements = root.declarations.filter(ast.isRequire).flatMap(node => evaluateRequirement(context, node) ?? []);
    const survey = evaluateSurvey(context, root);
    const access = evaluateAccess(context, root);
    evaluateNotComputed(context, root);
    checkUnusedValues(context, root);
    evaluateBreakEvens(context, root, new Set(reasons.keys()));
    const isSound = ({ name }: Member) => !reasons.has(name);
    const model: Model = {
        file, files: [file], job, values, materials, walls, members: members.filter(isSound), loads: loads.filter((load: Load) => !reasons.has(load.member)),
        hangers: [], stages: [], requirements, survey, access, notComputed: [...context.notComputed.values()], inputs: context.inputs
    };
    return { model, findings: bounded(withoutConsequences(context.findings, errors, unsound), file), broken };
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

/** What a statement that could not be read makes seem missing. */
const consequences = new Set([
    'no-material', 'no-section', 'no-length', 'no-support', 'no-grade', 'no-category', 'load-on-nothing', 'load-without-place', 'load-without-strip',
    'load-misplaced', 'empty-loss', 'floor-incomplete', 'said-twice'
]);

function withoutConsequences(findings: readonly Finding[], errors: readonly SyntaxError[], unsound: ReadonlySet<ast.Declaration>): readonly Finding[] {
    const runs = [...unsound].map(node => node.$cstNode!);
    const syntax = errors.map(error => error.finding);
    const units = new Set(syntax.filter(isUnitMistake).map(finding => finding.source.line));
    const told = findings.filter(({ code, source }) =>
        !(consequences.has(code) && runs.some(run => run.offset <= source.start && source.start < run.end)) && !(code === 'unit-missing' && units.has(source.line)));
    return [...syntax, ...told];
}

const isUnitMistake = ({ code }: Finding) => code === 'unknown-unit' || code === 'decimal-comma';

function bounded(findings: readonly Finding[], file: string): readonly Finding[] {
    const sorted = [...findings].sort((a, b) => a.source.start - b.source.start || severityRank(a) - severityRank(b));
    if (sorted.length <= mostFindings) {
        return sorted;
    }
    const kept = [...sorted].sort((a, b) => severityRank(a) - severityRank(b)).slice(0, mostFindings).sort((a, b) => a.source.start - b.source.start);
    const left = sorted.length - mostFindings;
    return [...kept, { severity: 'error', code: 'more-findings', message: `and ${left} more`, source: { ...kept.at(-1)!.source, file } }];
}

const severityRank = ({ severity }: Finding): number => (severity === 'error' ? 0 : 1);

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
