/** Work-done progress in the editor, for what takes long enough to be wondered about. */
import type { Connection } from 'vscode-languageserver';
import type { Doing } from '../../whole.js';
import type { Teller } from './later-results.js';

/** ms; what ends sooner is not told. */
const patience = 600;

export function progressOf(connection: Connection): Teller {
    let timer: ReturnType<typeof setTimeout> | undefined;
    let shown: { readonly report: (doing: Doing) => void; readonly done: () => void } | undefined;
    const end = (): void => {
        clearTimeout(timer);
        shown?.done();
        shown = undefined;
    };
    return {
        begin: cancel => {
            end();
            const own = setTimeout(() => {
                // An editor that cannot show it after all goes without.
                show(connection, cancel).then(found => {
                    if (timer === own) shown = found; else found.done();
                }, () => undefined);
            }, patience);
            timer = own;
        },
        report: doing => shown?.report(doing),
        end: () => {
            end();
            timer = undefined;
        }
    };
}

async function show(connection: Connection, cancel: () => void) {
    const progress = await connection.window.createWorkDoneProgress();
    progress.begin('Padstone: how sure it is', 0, undefined, true);
    progress.token.onCancellationRequested(cancel);
    return {
        report: ({ what, done, of }: Doing): void => progress.report(Math.floor(100 * done / Math.max(1, of)), of > 0 ? `${what}, ${Math.min(done + 1, of)} of ${of}` : what),
        done: (): void => progress.done()
    };
}
