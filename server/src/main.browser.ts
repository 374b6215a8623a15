/** The language server as a web worker. */
import { EmptyFileSystemProvider } from 'langium';
import { BrowserMessageReader, BrowserMessageWriter, createConnection } from 'vscode-languageserver/browser';
import { startServer } from './lsp/server.js';

const worker = self as unknown as Worker;
startServer(createConnection(new BrowserMessageReader(worker), new BrowserMessageWriter(worker)), new EmptyFileSystemProvider());
