import { DefaultDocumentBuilder, OperationCancelled, UriUtils, type DocumentState, type LangiumSharedCoreServices, type URI } from 'langium';
import { CancellationToken } from 'vscode-languageserver';
import type { BuildScheduler } from './build-scheduler.js';

/** Every request waits until the text that the client sees is built, so that no answer is about an older one. */
export class SettledDocumentBuilder extends DefaultDocumentBuilder {
    constructor(services: LangiumSharedCoreServices, private readonly scheduler: BuildScheduler) {
        super(services);
    }

    override waitUntil(state: DocumentState, cancellation?: CancellationToken): Promise<void>;
    override waitUntil(state: DocumentState, uri?: URI, cancellation?: CancellationToken): Promise<URI>;
    override async waitUntil(state: DocumentState, uriOrToken?: URI | CancellationToken, cancellation?: CancellationToken): Promise<URI | void> {
        if (!uriOrToken || CancellationToken.is(uriOrToken)) {
            return super.waitUntil(state, uriOrToken);
        }
        await this.settled(uriOrToken, cancellation ?? CancellationToken.None);
        if (cancellation?.isCancellationRequested) {
            throw OperationCancelled;
        }
        return super.waitUntil(state, uriOrToken, cancellation);
    }

    /** Ends also when the request is cancelled. */
    private settled(uri: URI, cancellation: CancellationToken): Promise<void> {
        return new Promise(resolve => {
            const forget = this.scheduler.whenSettled(UriUtils.normalize(uri), resolve);
            cancellation.onCancellationRequested(() => {
                forget();
                resolve();
            });
        });
    }
}
