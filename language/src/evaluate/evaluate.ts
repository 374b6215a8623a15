import type { LangiumDocument } from 'langium';
import * as ast from '../generated/ast.js';
import { refusal } from '../lexing/lexer.js';
import type { Evaluation, Model } from '../model.js';
import { evaluateBreakEvens } from './break-evens.js';
import { brokenMembers, unsoundDeclarations } from './broken.js';
import type { Reading } from './calculation.js';
import { evaluateCalculation, soundOf } from './calculation.js';
import { expandParts } from './expand-parts.js';
import type { Include, ReadFiles } from './includes.js';
import { readFiles } from './includes.js';
import { evaluateLoadTest } from './load-tests.js';
import { evaluateOptions } from './options.js';
import { syntaxErrors } from './syntax.js';
import { findingsToTell } from './told.js';

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

function evaluateFiles(read: ReadFiles, included: boolean): Evaluation {
    const { files } = read;
    const main = files[0]!;
    const errors = files.flatMap(one => syntaxErrors(one.document.parseResult, one.document.textDocument.getText(), one.file));
    const unsound = new Set(files.flatMap(one => [...unsoundDeclarations(one.root, errors.filter(error => error.finding.source.file === one.file))]));
    const expansions = expandParts(read.declarations, unsound);
    const root: ast.Calculation = { ...main.root, declarations: [...read.declarations, ...expansions.declarations] };
    const reading: Reading = { files, included, incomplete: read.incomplete, errors, unsound, expansions };
    const drawn = evaluateCalculation(reading, root);
    const { context } = drawn;
    context.findings.push(...read.findings);
    const broken = brokenMembers(context, root, drawn.broken);
    const loadTests = soundOf(context, unsound)(root.declarations.filter(ast.isLoadTest), node => evaluateLoadTest(context, node), () => undefined)
        .filter(({ member }) => !drawn.broken.has(member));
    const options = evaluateOptions(reading, root, drawn);
    const breakEvens = evaluateBreakEvens(context, root, drawn.broken);
    const model: Model = { ...drawn.model, breakEvens, loadTests, options, notComputed: [...context.notComputed.values()] };
    return { model, findings: findingsToTell(context, errors, unsound, main.file), broken };
}

function nothing(file: string, code: string, message: string): Evaluation {
    const source = { file, start: 0, end: 0, line: 1, column: 1 };
    return {
        model: {
            file, files: [file], job: { title: '', basis: 'EN1995', serviceClass: 2, serviceClassStated: false, combinations: '6.10', source },
            values: [], materials: [], walls: [], members: [], loads: [], hangers: [], stages: [], requirements: [], breakEvens: [], loadTests: [], options: [], answers: [], notComputed: [], inputs: []
        },
        findings: [{ severity: 'error', code, message, source }], broken: []
    };
}
