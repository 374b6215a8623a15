import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { calculateFile } from '../../server/src/command/calculate-file.js';
import type { Results } from '../../server/src/results.js';

const folder = fileURLToPath(new URL('../../samples', import.meta.url));

/** Every sample with what it includes, computed. */
export const samples: readonly (readonly [name: string, results: Results])[] = readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter(name => name.endsWith('.padstone') && !name.includes('details'))
    .map(name => [name, calculateFile(join(folder, name)).results]);
