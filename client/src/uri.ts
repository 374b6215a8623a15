import { Uri } from 'vscode';

/** Undefined where the text is no address. */
export function parseUri(text: string): Uri | undefined {
    try {
        return Uri.parse(text, true);
    } catch {
        return undefined;
    }
}

/** Servers may escape an address otherwise than the editor does: compare what is meant. */
export function sameUri(text: string, uri: Uri): boolean {
    return parseUri(text)?.toString() === uri.toString();
}
