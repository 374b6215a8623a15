import type { Format } from './format.js';
import { github } from './github.js';
import { json } from './json.js';
import { junit } from './junit.js';
import { sarif } from './sarif.js';
import { text } from './text.js';

/** The formats of `--format`, by name. */
export const formats = { text, json, sarif, junit, github } satisfies Readonly<Record<string, Format>>;
export type FormatName = keyof typeof formats;
