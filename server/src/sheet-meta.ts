import { version } from '../../package.json';
import type { Meta } from './sheet/head.js';

export type { Meta };

/** The text of one file that a calculation was made from. */
export interface Source {
    readonly file: string;
    readonly text: string;
}

/**
 * What a sheet says of its own making. The hash is the SHA-256 of the sources in UTF-8, the calculation first,
 * then what it includes in the order of reading: as `cat FILES | sha256sum` prints it.
 */
export async function sheetMeta(sources: readonly Source[], now: Date): Promise<Meta> {
    const digest = await crypto.subtle.digest('SHA-256', new TextEncoder().encode(sources.map(({ text }) => text).join('')));
    const sourceHash = [...new Uint8Array(digest)].map(byte => byte.toString(16).padStart(2, '0')).join('');
    return { sourceHash, version, date: `${now.toISOString().slice(0, 16).replace('T', ' ')} UTC`, included: sources.slice(1).map(({ file }) => file) };
}

/** What says when and by what a sheet was made left out: the same sources then make the same sheet. */
export function undated({ sourceHash, included }: Meta): Meta {
    return { sourceHash, included };
}
