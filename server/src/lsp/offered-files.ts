/** Files as the server may read them: those on its own disk, and through the editor all others that the editor has. */
import { EmptyFileSystemProvider, URI, type FileSystemNode, type FileSystemProvider } from 'langium';
import type { Connection } from 'vscode-languageserver';
import { readDirectoryRequest, readFileRequest, type EditorOffer, type ReadDirectoryAnswer } from '../protocol.js';

export class OfferedFiles {
    private readonly hasDisk: boolean;
    private offered = false;

    constructor(private readonly disk: FileSystemProvider, private readonly connection: Connection) {
        this.hasDisk = !(disk instanceof EmptyFileSystemProvider);
    }

    /** What the editor says at the start: whether it reads files for the server. */
    offer(options: EditorOffer | undefined): void {
        this.offered = options?.files === true;
    }

    canRead({ scheme }: URI): boolean {
        return this.isOnDisk(scheme) || (this.offered && scheme !== 'untitled');
    }

    /** @throws where there is no such file, or none that may be read */
    async readFile(uri: URI): Promise<string> {
        if (this.isOnDisk(uri.scheme)) {
            return this.disk.readFile(uri);
        }
        const text = this.offered ? await this.connection.sendRequest<string | null>(readFileRequest, { uri: uri.toString() }) : null;
        if (text === null) {
            throw new Error(`${uri.toString()} cannot be read.`);
        }
        return text;
    }

    /** @throws where there is no such folder, or none that may be read */
    async readDirectory(uri: URI): Promise<FileSystemNode[]> {
        if (this.isOnDisk(uri.scheme)) {
            return this.disk.readDirectory(uri);
        }
        const entries = this.offered ? await this.connection.sendRequest<ReadDirectoryAnswer>(readDirectoryRequest, { uri: uri.toString() }) : [];
        return entries.map(entry => ({ uri: URI.parse(entry.uri), isFile: !entry.folder, isDirectory: entry.folder }));
    }

    private isOnDisk(scheme: string): boolean {
        return this.hasDisk && scheme === 'file';
    }
}
