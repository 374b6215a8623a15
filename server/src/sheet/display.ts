/** In which units and with which decimal sign numbers are shown. Never of what is computed or written as JSON. */
export interface Display {
    readonly units: 'si' | 'imperial';
    readonly decimal: 'point' | 'comma';
}

export const plainDisplay: Display = { units: 'si', decimal: 'point' };

let current = plainDisplay;

/**
 * Prints with a display: all of `./numbers.ts` follows it until `print` returns. Printing does not wait for
 * anything, so that no other printing comes in between.
 */
export function shownAs<T>(display: Display, print: () => T): T {
    const before = current;
    current = display;
    try {
        return print();
    } finally {
        current = before;
    }
}

export const isImperial = (): boolean => current.units === 'imperial';
export const hasComma = (): boolean => current.decimal === 'comma';
