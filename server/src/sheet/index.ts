/** The calculation sheet: a pure function of the results. */
export { plainDisplay, shownAs, type Display } from './display.js';
export { renderPreview } from './preview.js';
export { renderSheet } from './sheet.js';
export { renderComparisons } from './comparison.js';
