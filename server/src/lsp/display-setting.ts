import type { LangiumSharedServices } from 'langium/lsp';
import { plainDisplay, shownAs, type Display } from '../sheet/index.js';

const section = 'padstone';

/** The units and the decimal sign that the editor's settings ask for; points and SI until they are known. */
export class DisplaySetting {
    private display = plainDisplay;

    /** @param changed that what is shown has to be shown anew */
    follow(shared: LangiumSharedServices, changed: () => void): void {
        const settings = shared.workspace.ConfigurationProvider;
        const take = (given: unknown): void => {
            const display = displayFrom(given);
            if (display.units !== this.display.units || display.decimal !== this.display.decimal) {
                this.display = display;
                changed();
            }
        };
        settings.onConfigurationSectionUpdate(update => {
            if (update.section === section) {
                take((update.configuration as { display?: unknown } | undefined)?.display);
            }
        });
        void settings.getConfiguration(section, 'display').then(take);
    }

    get current(): Display {
        return this.display;
    }

    readonly shown = <T>(print: () => T): T => shownAs(this.display, print);
}

/** What is no such setting is as if it were not set. */
export function displayFrom(given: unknown): Display {
    const { units, decimal } = (given ?? {}) as Partial<Record<keyof Display, unknown>>;
    return { units: units === 'imperial' ? units : 'si', decimal: decimal === 'comma' ? decimal : 'point' };
}
