import { version } from '../../package.json';

/** What a sheet says of its own making. The hash is the SHA-256 of the source in UTF-8, as `sha256sum` prints it. */
export async function sheetMeta(text: string, now: Date): Promise<{ readonly sourceHash: string; readonly version: string; readonly date: string }> {
    const digest = await crypto.subtle.digest('SHA-256', new TextEncoder().encode(text));
    const sourceHash = [...new Uint8Array(digest)].map(byte => byte.toString(16).padStart(2, '0')).join('');
    return { sourceHash, version, date: `${now.toISOString().slice(0, 16).replace('T', ' ')} UTC` };
}
