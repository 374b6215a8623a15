import type { Outcome } from '../document/blocks.js';

/** The sheet's colours as its style sheet has them on white paper. */
const paper: Readonly<Record<string, string>> = {
    ink: '#1a1a1a', soft: '#555555', paper: '#ffffff', rule: '#c4c4c4', link: '#0b57a4', bad: '#a31515', good: '#17662f', doubt: '#754e00', wash: '#efefef'
};

export const colours = { ink: paper.ink!, soft: paper.soft!, rule: paper.rule!, link: paper.link! };

export const outcomeColours: Readonly<Record<Outcome, string>> = { pass: paper.good!, fail: paper.bad!, incomplete: paper.doubt! };

/** A value of the style sheet with its variables as they are on paper, lengths without their unit. */
export function onPaper(value: string): string {
    return value.replace(/var\(--([\w-]+)[^)]*\)/g, (_, name: string) => paper[name] ?? colours.ink).replace(/([\d.]+)px\b/g, '$1');
}
