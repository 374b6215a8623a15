import type { ComponentChildren } from 'preact';
import { inFormula } from '../numbers.js';
import { printPlain } from './plain.js';
import type { Row } from './tex.js';

/** Private characters that open what text has no room for, and the one that closes each. */
const sub = '\uE002';
const sup = '\uE003';
const link = '\uE004';
const close = '\uE005';

/** A formula in one line with real subscripts and exponents, for Markdown and PDF. */
export function PlainFormula({ row, equals }: { readonly row: Row; readonly equals: boolean }) {
    const hrefs: string[] = [];
    const text = printPlain(row, {
        sub: inside => sub + inside + close,
        sup: inside => sup + inside + close,
        value: (value, href) => href === undefined ? inFormula(value) : (hrefs.push(href), link + inFormula(value) + close)
    });
    return <span class="math">{equals && ' = '}{children(text, hrefs)}</span>;
}

function children(text: string, hrefs: readonly string[]): ComponentChildren[] {
    const tokens = text.match(/[\uE002-\uE005]|[^\uE002-\uE005]+/g) ?? [];
    let next = 0;
    let links = 0;

    function row(): ComponentChildren[] {
        const items: ComponentChildren[] = [];
        while (next < tokens.length) {
            const token = tokens[next++]!;
            switch (token) {
                case close: return items;
                case sub: items.push(<sub>{row()}</sub>); break;
                case sup: items.push(<sup>{row()}</sup>); break;
                case link: items.push(<a href={hrefs[links++]}>{row()}</a>); break;
                default: items.push(token);
            }
        }
        return items;
    }

    return row();
}
