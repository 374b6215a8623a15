import { outputFormat, toOutput } from '../../json/output.js';
import type { Format } from './format.js';

/** The object that `schema.ts` describes. */
export const json: Format = {
    tellsAsked: true,
    part: results => JSON.stringify(toOutput([results]).files[0], undefined, 2).replace(/\n/g, '\n    '),
    whole: files => `{\n  "format": ${outputFormat},\n  "files": [${files.map(({ part }) => `\n    ${part}`).join(',')}\n  ]\n}\n`
};
