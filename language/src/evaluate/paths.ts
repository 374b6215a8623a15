/** Paths of included files: names alone, no file is touched. */

/** `details/hangers.padstone` as `jobs/loft.padstone` says it is `jobs/details/hangers.padstone`. */
export function besideFile(file: string, path: string): string {
    const parts = file.replace(/\\/g, '/').split('/').slice(0, -1);
    for (const part of path.split('/')) {
        const last = parts.at(-1);
        if (part === '..' && last !== undefined && last !== '..' && last !== '') {
            parts.pop();
        } else if (part !== '.' && part !== '') {
            parts.push(part);
        }
    }
    return parts.join('/');
}

/** Why a path is not one that may be included, if it is not. */
export function refusedPath(path: string): string | undefined {
    if (path.trim() === '') {
        return 'this names no file';
    }
    if (/^[a-z][a-z0-9+.-]*:/i.test(path) || path.startsWith('//')) {
        return 'nothing is fetched: an include is a path relative to this file';
    }
    return path.startsWith('/') || path.includes('\\') ? 'an include is a path relative to this file, with / between its parts' : undefined;
}
