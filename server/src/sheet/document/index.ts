import { parseDocument } from 'htmlparser2';
import type { Results } from '../../results.js';
import type { Display } from '../display.js';
import type { Meta } from '../head.js';
import { renderContent } from '../sheet.js';
import type { Block } from './blocks.js';
import { readBlocks } from './read-blocks.js';

/** The whole sheet as blocks: what stands in its HTML, in the same order, so that no form of the sheet says less than another. */
export function sheetBlocks(results: Results, meta: Meta, display: Display): Block[] {
    return readBlocks(parseDocument(renderContent(results, meta, display)).children);
}
