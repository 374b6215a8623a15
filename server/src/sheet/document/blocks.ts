/** The sheet as a plain document: what Markdown and PDF are written from, read from the sheet's own HTML. */
import type { Element } from 'domhandler';

/** A run of text in one style. */
export interface Run {
    readonly text: string;
    readonly bold?: boolean;
    readonly small?: boolean;
    readonly code?: boolean;
    readonly script?: 'sub' | 'sup';
    /** Within the sheet: the id of another place. */
    readonly target?: string;
    /** A mark or word of an outcome. */
    readonly outcome?: Outcome;
    /** A line break before it. */
    readonly breaks?: boolean;
}

export type Outcome = 'pass' | 'fail' | 'incomplete';
export type Text = readonly Run[];

interface Anchored {
    /** Ids by which other places link to it. */
    readonly ids: readonly string[];
}

export type Block = Anchored & (
    | { readonly kind: 'heading'; readonly level: 1 | 2 | 3; readonly text: Text }
    | { readonly kind: 'paragraph'; readonly text: Text }
    | { readonly kind: 'formula'; readonly text: Text }
    | { readonly kind: 'list'; readonly ordered: boolean; readonly items: readonly (readonly Block[])[] }
    | { readonly kind: 'table'; readonly head: readonly Text[]; readonly rows: readonly Row[] }
    /** A name and what it is; nothing is a line to write on. */
    | { readonly kind: 'definitions'; readonly entries: readonly Definition[] }
    | { readonly kind: 'fold'; readonly summary: Text; readonly blocks: readonly Block[] }
    /** A verdict, set apart. */
    | { readonly kind: 'box'; readonly outcome: Outcome; readonly blocks: readonly Block[] }
    | { readonly kind: 'drawing'; readonly title: string; readonly description: string; readonly svg: Element; readonly caption: Text }
    /** Drawings side by side. */
    | { readonly kind: 'row'; readonly blocks: readonly Block[] }
);

export interface Definition extends Anchored {
    readonly term: Text;
    readonly text: Text;
}

export interface Row extends Anchored {
    readonly cells: readonly Cell[];
}

export interface Cell {
    readonly text: Text;
    readonly span: number;
    readonly isNumber: boolean;
    /** A bar of utilisation, which repeats a number of the text. */
    readonly bar?: Element;
}

export function plainText(text: Text): string {
    return text.map(run => (run.breaks ? ' ' : '') + run.text).join('').trim();
}
