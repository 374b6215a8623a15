/** Where a number of a calculation comes from that is neither an input nor an earlier line, told by its symbol (EN 1990 and 1995 name them so). */
export interface Origin {
    readonly words: string;
    readonly place: 'subject' | 'basis';
}

const origins: readonly (readonly [symbol: RegExp, origin: Origin])[] = [
    [/^(?:[MVNF]_(?:d|\{(?:[^{}]*,)?(?:Ed[a-z]?|d)\})|w_\{(?:inst|fin|net)[^{}]*\})$/, { words: 'from the analysis', place: 'subject' }],
    [/^(?:\\gamma_|\\psi|k_\{(?:mod|def|cr)\})/, { words: 'a value of the basis', place: 'basis' }],
    [/^(?:f|E|G)_|^\\rho/, { words: 'of the class of the material', place: 'subject' }]
];

/** Lengths, areas, moments of area and angles. */
const geometry = /^(?:[abcdehilrstzAIW]|\\Delta|\\alpha)(?:_(?!\{[^{}]*Rd)|$)/;

export function originOfSymbol(symbol: string): Origin {
    return origins.find(([pattern]) => pattern.test(symbol))?.[1] ?? { words: geometry.test(symbol) ? 'as drawn' : 'of this part', place: 'subject' };
}

/** Whether it is worked out or listed in another part of the sheet, which is worth a link whatever else is known of it. */
export function isElsewhere(symbol: string): boolean {
    return origins.slice(0, 2).some(([pattern]) => pattern.test(symbol));
}
