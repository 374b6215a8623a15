/** Diagnostics for an editor that asks for them: of what is open, and of every calculation in its folders. */
import type { CancellationToken, Connection, Diagnostic, DocumentDiagnosticReport, PreviousResultId, WorkspaceDocumentDiagnosticReport } from 'vscode-languageserver';
import type { EditorOffer } from '../protocol.js';
import type { AnyResults } from './any-results.js';
import { orCancelled } from './cancelled.js';
import { diagnosticsOf, documented } from './diagnostics.js';
import type { FileNames } from './names/file-names.js';
import type { WorkspaceNames } from './names/workspace-names.js';
import type { WorkspaceFolders } from './workspace-folders.js';

/** ms between two calculations that nobody has open: what is typed comes first. */
const pause = 15;

interface Kept {
    /** The file and what it includes, as they were. */
    readonly files: readonly FileNames[];
    readonly id: string;
    readonly diagnostics: readonly Diagnostic[];
}

export class PullDiagnostics {
    private offer: EditorOffer = {};
    private readonly kept = new Map<string, Kept>();

    constructor(private readonly results: AnyResults, private readonly names: WorkspaceNames, private readonly folders: WorkspaceFolders) { }

    start(offer: EditorOffer | undefined): void {
        this.offer = offer ?? {};
    }

    addTo(connection: Connection): void {
        connection.languages.diagnostics.on(({ textDocument, previousResultId }, cancellation) =>
            orCancelled(this.ofOpen(textDocument.uri, cancellation).then(diagnostics => report(diagnostics, previousResultId))));
        connection.languages.diagnostics.onWorkspace(async ({ previousResultIds }, cancellation, _progress, reporter) => {
            const items: WorkspaceDocumentDiagnosticReport[] = [];
            for (const uri of this.offer.wholeFolder === false ? [] : await this.folders.list()) {
                if (cancellation.isCancellationRequested) {
                    break;
                }
                const item = this.results.isOpen(uri) ? undefined : await this.ofClosed(uri, previousResultIds);
                if (item && reporter) {
                    reporter.report({ items: [item] });
                } else if (item) {
                    items.push(item);
                }
            }
            return { items };
        });
    }

    private async ofOpen(uri: string, cancellation: CancellationToken): Promise<readonly Diagnostic[]> {
        const computed = await this.results.of(uri, cancellation);
        return computed ? documented(diagnosticsOf(computed), this.offer.documentation) : [];
    }

    private async ofClosed(uri: string, previous: readonly PreviousResultId[]): Promise<WorkspaceDocumentDiagnosticReport | undefined> {
        const file = await this.names.at(uri);
        if (!file) {
            return undefined;
        }
        const files = await this.names.withIncludes(file);
        const kept = this.kept.get(uri);
        const unchanged = kept?.files.length === files.length && kept.files.every((one, index) => one === files[index]);
        const now = unchanged ? kept : await this.computeClosed(uri, files);
        const known = previous.find(one => one.uri === uri)?.value;
        return known === now.id ? { uri, version: null, kind: 'unchanged', resultId: now.id } : { uri, version: null, kind: 'full', resultId: now.id, items: [...now.diagnostics] };
    }

    private async computeClosed(uri: string, files: readonly FileNames[]): Promise<Kept> {
        await new Promise(resolve => setTimeout(resolve, pause));
        const computed = await this.results.of(uri);
        const diagnostics = computed ? documented(diagnosticsOf(computed), this.offer.documentation) : [];
        const made: Kept = { files, id: idOf(diagnostics), diagnostics };
        this.kept.set(uri, made);
        return made;
    }
}

function report(diagnostics: readonly Diagnostic[], previous: string | undefined): DocumentDiagnosticReport {
    const resultId = idOf(diagnostics);
    return resultId === previous ? { kind: 'unchanged', resultId } : { kind: 'full', resultId, items: [...diagnostics] };
}

/** FNV-1a of what is said. */
function idOf(diagnostics: readonly Diagnostic[]): string {
    let hash = 0x811c9dc5;
    for (const character of JSON.stringify(diagnostics)) {
        hash = Math.imul(hash ^ character.codePointAt(0)!, 0x01000193);
    }
    return (hash >>> 0).toString(36);
}
