/** The files that a file includes, and those that they include. */
import type { LangiumDocument } from 'langium';
import { GrammarUtils } from 'langium';
import * as ast from '../generated/ast.js';
import { refusal } from '../lexing/lexer.js';
import type { Finding } from '../model.js';
import { besideFile, refusedPath } from './paths.js';
import { sourceOf, sourceOfCst } from './source.js';

/**
 * The document of an included file: `path` as it is written in `fromFile`, which is called as the places of findings call it.
 * `refused` says why a file that may be there is not to be read; undefined where there is none.
 */
export type Include = (path: string, fromFile: string) => LangiumDocument | { readonly refused: string } | undefined;

export interface ReadFile {
    readonly file: string;
    readonly document: LangiumDocument;
    readonly root: ast.Calculation;
}

export interface ReadFiles {
    /** The main file first. */
    readonly files: readonly ReadFile[];
    /** Of all files, those of an included one where it is included. */
    readonly declarations: readonly ast.Declaration[];
    readonly findings: readonly Finding[];
    /** Whether some file was not read: what is not known may be declared there. */
    readonly incomplete: boolean;
}

/** A calculation that includes more is not one that a person wrote. */
const mostFiles = 200;

export function readFiles(document: LangiumDocument, file: string, include: Include | undefined): ReadFiles {
    const files: ReadFile[] = [];
    const findings: Finding[] = [];
    let incomplete = false;
    const refuse = (node: ast.Include, from: ReadFile, code: string, message: string): readonly [] => {
        const cst = GrammarUtils.findNodeForProperty(node.$cstNode, 'path');
        findings.push({ severity: 'error', code, message, source: cst === undefined ? sourceOf(node, from.file) : sourceOfCst(cst, from.file) });
        incomplete = true;
        return [];
    };
    const follow = (node: ast.Include, from: ReadFile, open: readonly ReadFile[]): readonly ast.Declaration[] => {
        const { path } = node;
        const wrong = path === undefined ? undefined : refusedPath(path);
        if (wrong !== undefined) {
            return refuse(node, from, 'include-refused', wrong);
        }
        if (path === undefined || include === undefined) {
            incomplete = true;
            return [];
        }
        const name = besideFile(from.file, path);
        const isOpen = ({ file, document: opened }: ReadFile) => file === name || opened === found;
        const found = open.some(other => other.file === name) ? undefined : include(path, from.file);
        const circle = open.findIndex(isOpen);
        if (circle >= 0) {
            return refuse(node, from, 'include-circle', `circle of includes: ${[...open.slice(circle).map(other => other.file), name].join(' → ')}`);
        }
        if (found === undefined || 'refused' in found) {
            return refuse(node, from, found === undefined ? 'include-missing' : 'include-refused', found === undefined ? `there is no file ${name}` : `${path}: ${found.refused}`);
        }
        if (files.some(isOpen)) {
            return [];
        }
        const unreadable = refusal(found.textDocument.getText()) ?? (files.length >= mostFiles ? `at most ${mostFiles} files are read` : undefined);
        return unreadable === undefined ? read(found, name, open) : refuse(node, from, 'not-read', `${name}: ${unreadable}`);
    };
    const read = (of: LangiumDocument, name: string, open: readonly ReadFile[]): readonly ast.Declaration[] => {
        const one: ReadFile = { file: name, document: of, root: of.parseResult.value as ast.Calculation };
        files.push(one);
        return one.root.declarations.flatMap(node => (ast.isInclude(node) ? [node, ...follow(node, one, [...open, one])] : [node]));
    };
    const declarations = read(document, file, []);
    return { files, declarations, findings, incomplete };
}
