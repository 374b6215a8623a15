import pc from 'picocolors';
import type { Display } from '../../sheet/index.js';

/** What a format prints on, as plain data. */
export interface PageSettings {
    /** Columns of the terminal. */
    readonly width: number;
    readonly coloured: boolean;
    /** Of what is printed for a person. */
    readonly display: Display;
}

export interface Page {
    readonly width: number;
    readonly colors: ReturnType<typeof pc.createColors>;
    readonly settings: PageSettings;
}

export const pageOf = (settings: PageSettings): Page => ({ width: settings.width, colors: pc.createColors(settings.coloured), settings });
