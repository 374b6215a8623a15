/** The calculations in the folders that the editor has open: listed when they are first asked for, and anew when one comes or goes. */
import { URI, UriUtils, type FileSystemNode } from 'langium';
import { FileChangeType, type FileEvent, type InitializeParams, type WorkspaceFoldersChangeEvent } from 'vscode-languageserver';
import type { OfferedFiles } from './offered-files.js';

/** Folders that hold what others made. */
const skipped = /^(?:\.|node_modules$)/;
/** A folder with more is no folder of jobs. */
const most = 5000;

export class WorkspaceFolders {
    private folders: readonly string[] = [];
    private listed: Promise<readonly string[]> | undefined;

    constructor(private readonly files: OfferedFiles) { }

    initialize({ workspaceFolders, rootUri }: InitializeParams): void {
        this.folders = workspaceFolders?.map(({ uri }) => uri) ?? (rootUri ? [rootUri] : []);
    }

    foldersChanged({ added, removed }: WorkspaceFoldersChangeEvent): void {
        this.folders = [...this.folders.filter(folder => !removed.some(({ uri }) => uri === folder)), ...added.map(({ uri }) => uri)];
        this.listed = undefined;
    }

    filesChanged(changes: readonly FileEvent[]): void {
        if (changes.some(({ type }) => type !== FileChangeType.Changed)) {
            this.listed = undefined;
        }
    }

    /** Addresses of all of them, in the order of folders and names. */
    list(): Promise<readonly string[]> {
        this.listed ??= this.walk();
        return this.listed;
    }

    private async walk(): Promise<readonly string[]> {
        const found = new Set<string>();
        const waiting = this.folders.map(folder => URI.parse(folder));
        for (let folder = waiting.shift(); folder !== undefined && found.size < most; folder = waiting.shift()) {
            for (const entry of await this.entries(folder)) {
                const name = UriUtils.basename(entry.uri);
                if (entry.isDirectory && !skipped.test(name)) {
                    waiting.push(entry.uri);
                } else if (entry.isFile && name.endsWith('.padstone')) {
                    found.add(UriUtils.normalize(entry.uri));
                }
            }
        }
        return [...found];
    }

    private async entries(folder: URI): Promise<readonly FileSystemNode[]> {
        try {
            const entries = await this.files.readDirectory(folder);
            return [...entries].sort((a, b) => a.uri.path < b.uri.path ? -1 : 1);
        } catch {
            // A folder that is gone or that may not be read holds nothing for us.
            return [];
        }
    }
}
