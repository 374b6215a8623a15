import type { Results } from '../../results.js';
import { json } from './json.js';
import type { Page } from './page.js';
import { text } from './text.js';

/** The formats of `--format`, by name. */
export const formats: Readonly<Record<string, (files: readonly Results[], page: Page) => string>> = { text, json };
