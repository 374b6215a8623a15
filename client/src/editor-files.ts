import { FileType, Uri, workspace } from 'vscode';
import type { ReadDirectoryAnswer } from '../../server/src/protocol.js';

/** Reads for a server that has no disk, or not this one; null where there is no such file. */
export async function readFile(uri: string): Promise<string | null> {
    try {
        return new TextDecoder().decode(await workspace.fs.readFile(Uri.parse(uri)));
    } catch {
        return null;
    }
}

/** Empty where there is no such folder. */
export async function readDirectory(uri: string): Promise<ReadDirectoryAnswer> {
    const folder = Uri.parse(uri);
    try {
        const entries = await workspace.fs.readDirectory(folder);
        // A link to a folder may lead back to where it stands.
        return entries.filter(([, type]) => type === FileType.File || type === FileType.Directory || type === (FileType.File | FileType.SymbolicLink))
            .map(([name, type]) => ({ uri: Uri.joinPath(folder, name).toString(), folder: type === FileType.Directory }));
    } catch {
        return [];
    }
}
