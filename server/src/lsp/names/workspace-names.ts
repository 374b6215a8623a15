/** Which name means what, over all files of the editor and of its folders. */
import { URI, type LangiumDocument } from 'langium';
import * as ast from '../../../../language/src/generated/ast.js';
import type { IncludedFiles } from '../included-files.js';
import type { WorkspaceFolders } from '../workspace-folders.js';
import { fileNames, type Declared, type FileNames, type Place, type Used } from './file-names.js';

export class WorkspaceNames {
    /** By the root of the tree: a document keeps its identity when it is parsed anew. */
    private readonly known = new WeakMap<object, FileNames>();

    constructor(private readonly files: IncludedFiles, private readonly folders: WorkspaceFolders) { }

    of(document: LangiumDocument): FileNames {
        const root = document.parseResult.value;
        const names = this.known.get(root) ?? fileNames(document);
        this.known.set(root, names);
        return names;
    }

    /** The names of a file; undefined where it cannot be read. */
    async at(uri: string): Promise<FileNames | undefined> {
        const document = await this.files.document(URI.parse(uri));
        return document && this.of(document);
    }

    /** Every calculation of the editor and its folders. */
    async all(): Promise<readonly FileNames[]> {
        const uris = new Set([...this.files.openUris(), ...await this.folders.list()]);
        const found: FileNames[] = [];
        for (const uri of uris) {
            const names = await this.at(uri);
            if (names) {
                found.push(names);
            }
        }
        return found;
    }

    /** The file and all that it includes, near ones first. */
    async withIncludes(file: FileNames): Promise<readonly FileNames[]> {
        const found = new Map([[file.uri, file]]);
        for (const one of found.values()) {
            for (const { uri } of one.includes) {
                const included = found.has(uri) ? undefined : await this.at(uri);
                if (included) {
                    found.set(uri, included);
                }
            }
        }
        return [...found.values()];
    }

    /** What the cursor is on: a declaration, or what is called by a name. */
    async declaredAt(document: LangiumDocument, offset: number): Promise<{ readonly declared: Declared; readonly at: Place } | undefined> {
        const file = this.of(document);
        const own = file.declared.find(({ at }) => holds(at, offset));
        if (own) {
            return { declared: own, at: own.at };
        }
        const used = file.used.find(({ at }) => holds(at, offset));
        const declared = used && await this.resolve(used);
        return declared && { declared, at: used.at };
    }

    /** In its detail, in its file, in what that includes, and in what includes that. */
    async resolve(used: Used): Promise<Declared | undefined> {
        if (used.of) {
            return this.resolvePart(used, used.of);
        }
        const { file, owner, name } = used;
        const own = owner && file.declared.find(declared => declared.owner === owner && declared.name === name);
        if (own) {
            return own;
        }
        const isWanted = wanted(used);
        const first = (files: readonly FileNames[]): Declared | undefined =>
            files.flatMap(({ declared }) => declared).find(declared => declared.owner === undefined && declared.name === name && isWanted(declared));
        return first(await this.withIncludes(file)) ?? first(await this.around(file));
    }

    /** Everything in any file that means this. */
    async usesOf(declared: Declared): Promise<readonly Used[]> {
        const found: Used[] = [];
        for (const file of await this.all()) {
            found.push(...await this.usesIn(file, declared));
        }
        return found;
    }

    async usesIn(file: FileNames, declared: Declared): Promise<readonly Used[]> {
        const found: Used[] = [];
        for (const used of file.used) {
            if (used.name === declared.name && (await this.resolve(used))?.node === declared.node) {
                found.push(used);
            }
        }
        return found;
    }

    /** Names that can stand in a place, of this file and its includes. */
    async visible(file: FileNames, owner: ast.Detail | undefined): Promise<readonly Declared[]> {
        const files = await this.withIncludes(file);
        return files.flatMap(({ declared }) => declared).filter(declared => declared.owner === undefined || declared.owner === owner);
    }

    private async resolvePart(used: Used, of: Used): Promise<Declared | undefined> {
        const whole = await this.resolve(of);
        const detail = whole && (ast.isUse(whole.node) ? await this.detailOf(whole) : whole);
        return detail?.file.declared.find(declared => declared.owner === detail.node && declared.name === used.name);
    }

    private async detailOf(use: Declared): Promise<Declared | undefined> {
        const used = use.file.used.find(candidate => candidate.node === use.node && candidate.of === undefined);
        return used && this.resolve(used);
    }

    /** What is included counts as if it stood where it is included: it may name what is declared there. */
    private async around(file: FileNames): Promise<readonly FileNames[]> {
        const found: FileNames[] = [];
        for (const other of await this.all()) {
            const files = other.uri === file.uri ? [] : await this.withIncludes(other);
            if (files.some(({ uri }) => uri === file.uri)) {
                found.push(...files);
            }
        }
        return found;
    }
}

/** A detail is used, all else is pointed at. */
function wanted({ node }: Used): (declared: Declared) => boolean {
    return ast.isUse(node) ? ({ node }) => ast.isDetail(node) : ({ node }) => ast.isNamed(node);
}

export function holds({ start, end }: Pick<Place, 'start' | 'end'>, offset: number): boolean {
    return start <= offset && offset <= end;
}

export const uriOf = ({ document }: FileNames): string => document.uri.toString();

