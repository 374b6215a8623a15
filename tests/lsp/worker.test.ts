/** The same server as a web worker: the bundle of the browser, given what a worker has and nothing of Node. */
import { existsSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import vm from 'node:vm';
import { AbstractMessageReader, AbstractMessageWriter, type DataCallback, type Disposable, type Message } from 'vscode-languageserver/node';
import { expect, test } from 'vitest';
import { Client } from './client.js';
import { shed } from './jobs.js';

const bundle = fileURLToPath(new URL('../../dist/server.web.js', import.meta.url));

interface WorkerScope {
    onmessage?: (event: { data: Message }) => void;
    postMessage(data: Message): void;
    addEventListener(): void;
}

/** What the page sees of a worker. */
class Port extends AbstractMessageReader {
    readonly writer = new (class extends AbstractMessageWriter {
        constructor(private readonly port: Port) { super(); }
        async write(message: Message): Promise<void> { setImmediate(() => this.port.scope.onmessage?.({ data: structuredClone(message) })); }
        end(): void { }
    })(this);
    private callback: DataCallback | undefined;
    readonly scope: WorkerScope = {
        postMessage: data => setImmediate(() => this.callback?.(structuredClone(data))),
        addEventListener: () => { }
    };

    listen(callback: DataCallback): Disposable {
        this.callback = callback;
        return { dispose: () => { this.callback = undefined; } };
    }
}

test('answers in a scope without process, require and files', async () => {
    expect(existsSync(bundle), 'run `npm run build` first').toBe(true);
    const port = new Port();
    // JavaScript's own are there in any new context; these are what the web adds to them.
    const web = { console, performance, setTimeout, clearTimeout, setInterval, clearInterval, queueMicrotask, TextEncoder, TextDecoder, URL, crypto, structuredClone };
    const scope: object = Object.assign(port.scope, web, { self: port.scope });
    vm.runInNewContext(readFileSync(bundle, 'utf8'), scope);
    const client = await Client.connect(port, port.writer, Promise.resolve(0));
    const uri = 'file:///jobs/shed.padstone';
    await client.open(uri, shed);
    expect(await client.hintLabels(uri)).toEqual([expect.stringMatching(/ % · .* = L\/\d+$/), expect.stringMatching(/ % · .* = L\/\d+$/)]);
    expect((await client.diagnosticsOf(uri, 1)).diagnostics.filter(({ severity }) => severity === 1)).toEqual([]);
    client.connection.dispose();
});
