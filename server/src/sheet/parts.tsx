/** Small pieces that every section is made of. */
import { createContext, toChildArray, type ComponentChildren } from 'preact';
import { useContext } from 'preact/hooks';
import type { SourceRef } from '../../../language/src/model.js';
import { clip } from './drawing/labels.js';
import { marks, outcomeWords, type Outcome } from './outcome.js';
import { combinationLabel } from './prose.js';

/** How the whole is shown: the file that line numbers are of, whether calculations start folded, formulas as text for what has no MathML. */
export interface View {
    readonly file: string;
    readonly folded: boolean;
    readonly plainMath?: boolean;
    /** The ids of members and hangers that are shown, by their names. */
    readonly subjects?: ReadonlyMap<string, string>;
}

export const ViewContext = createContext<View>({ file: '', folded: false });

/** The line of a place, for what follows the cursor: none where it is in another file. */
export function useLineOf(): (source: SourceRef | undefined) => number | undefined {
    const { file } = useContext(ViewContext);
    return source => source?.file === file ? source.line : undefined;
}

/** Where in the text: `line 12`, with the file's name where it is another one. In the pane a button that leads there. */
export function Line({ source }: { readonly source: SourceRef }) {
    const { file, folded } = useContext(ViewContext);
    const line = useLineOf()(source);
    const words = `${source.file === file ? '' : `${source.file.split(/[\\/]/).at(-1)} `}line ${source.line}`;
    return folded && line !== undefined ? <button type="button" class="line" data-line={line}>{words}</button> : <span class="line" data-line={line}>{words}</span>;
}

/** In words first; the class only repeats it. */
export function OutcomeMark({ outcome }: { readonly outcome: Outcome }) {
    return <span class={`outcome ${outcome}`}><span aria-hidden="true">{marks[outcome]} </span>{outcomeWords[outcome]}</span>;
}

interface BlockProps {
    readonly id: string;
    readonly title: string;
    readonly line?: number;
    readonly children: ComponentChildren;
}

export function Block({ id, title, line, children }: BlockProps) {
    return <section id={id} data-line={line} aria-labelledby={`${id}-title`}><h2 id={`${id}-title`}>{title}</h2>{children}</section>;
}

interface TableProps {
    /** Of its style. */
    readonly name: string;
    /** What it is of: not seen, since a heading stands near, but read out. */
    readonly caption: string;
    readonly head: readonly string[];
    readonly children: ComponentChildren;
}

/** Rows of a table that is not parted over two pages. */
const shortTable = 14;

/** A table that scrolls by itself, also by keyboard, where the pane is too narrow. */
export function Table({ name, caption, head, children }: TableProps) {
    return (
        <div class={toChildArray(children).length <= shortTable ? 'table short' : 'table'} tabIndex={0} role="group" aria-label={caption}>
            <table class={name}>
                <caption>{caption}</caption>
                <thead><tr>{head.map(text => <th scope="col">{text}</th>)}</tr></thead>
                <tbody>{children}</tbody>
            </table>
        </div>
    );
}

/** Longer ones name every load; a table shows the beginning, and the calculation the whole. */
const longestCombination = 64;

export function Combination({ label: given }: { readonly label: string }) {
    const label = combinationLabel(given);
    const shown = clip(label, longestCombination);
    return shown === label ? <>{label}</> : <span title={label}>{shown.replace(/[\s,+(]*…$/, ' …')}</span>;
}
