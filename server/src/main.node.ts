/** The language server as a process of its own; the arguments say how it is spoken to (`--stdio`, `--node-ipc`). */
import { NodeFileSystem } from 'langium/node';
import { createConnection, ProposedFeatures } from 'vscode-languageserver/node';
import { startServer } from './lsp/server.js';

startServer(createConnection(ProposedFeatures.all), NodeFileSystem.fileSystemProvider());
