import type { Compared } from '../../diff.js';
import type { Page } from '../page.js';
import { diffHtml } from './html.js';
import { diffJson } from './json.js';
import { diffMarkdown } from './markdown.js';
import { diffText } from './text.js';

/** The formats of `padstone diff --format`, by name. */
export const diffFormats: Readonly<Record<string, (compared: readonly Compared[], page: Page) => string>> = {
    text: diffText, markdown: diffMarkdown, json: diffJson, html: diffHtml
};
