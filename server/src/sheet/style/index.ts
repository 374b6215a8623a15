import { drawingStyle } from './drawing.js';
import { textStyle } from './text.js';

export { pageStyle } from './page.js';

/** Serves the preview pane, with the editor's theme, and the page by itself, light or dark. */
export const sheetStyle = textStyle + drawingStyle;
