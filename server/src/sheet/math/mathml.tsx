import { useContext } from 'preact/hooks';
import temml from 'temml';
import type { Amount } from '../../results.js';
import { amountParts, decimal, inFormula } from '../numbers.js';
import { ViewContext } from '../parts.js';
import { texToText } from '../plain-math.js';
import { PlainFormula } from './plain-formula.js';
import { parseTex, printTex, type Row } from './tex.js';

/** Characters of a formula that still fits the width of a sheet of paper: a longer one is set smaller there. */
const longest = 85;

/** A formula as MathML, or as text where the view wants that or TeX is not understood; numbers link to where they come from. */
export function Formula({ row, equals = false }: { readonly row: Row; readonly equals?: boolean }) {
    const { plainMath } = useContext(ViewContext);
    if (plainMath) {
        return <PlainFormula row={row} equals={equals} />;
    }
    const hrefs: string[] = [];
    const tex = (equals ? '{} = ' : '') + withDecimals(uprightWords(printTex(row, (value, href) => {
        return href === undefined ? valueToTex(value) : linked(value, href, hrefs);
    }, ' \\, ')));
    const { mathml, long } = set(tex);
    return mathml === undefined ? <code>{texToText(tex)}</code>
        : <span class={long ? 'math long' : 'math'} dangerouslySetInnerHTML={{ __html: withLinks(mathml, hrefs) }} />;
}

/** The reader's decimal sign in the numbers of the formula itself; TeX would set a space after a comma alone. */
function withDecimals(tex: string): string {
    return tex.replace(/(?<![\d.])\d+\.\d+(?![\d.])/g, number => decimal(number).replace(',', '{,}'));
}

/** Around a number that links, so that the same formula is set once whatever it links to; no formula has these characters. */
const open = '⟦';
const close = '⟧';

function linked(value: Amount, href: string, hrefs: string[]): string {
    hrefs.push(href);
    return text(open + inFormula(value) + close);
}

/** The element of text is the one place of MathML where HTML may stand. */
function withLinks(mathml: string, hrefs: readonly string[]): string {
    let next = 0;
    return mathml.replaceAll(open, () => `<a href="${escapeAttribute(hrefs[next++] ?? '')}">`).replaceAll(close, '</a>');
}

const escapeAttribute = (value: string): string => value.replace(/&/g, '&amp;').replace(/"/g, '&quot;').replace(/</g, '&lt;');

export function Tex({ tex }: { readonly tex: string }) {
    return <Formula row={parseTex(tex)} />;
}

/** Enough for the formulas of a big file; emptied when full, since what is typed leaves its numbers behind. */
const memoLimit = 4000;
const memo = new Map<string, TypeSet>();

interface TypeSet {
    readonly mathml: string | undefined;
    readonly long: boolean;
}

function set(tex: string): TypeSet {
    const known = memo.get(tex);
    if (known) {
        return known;
    }
    if (memo.size >= memoLimit) {
        memo.clear();
    }
    const made = { mathml: render(tex), long: texToText(tex).length > longest };
    memo.set(tex, made);
    return made;
}

/** temml escapes all text itself and allows no links or styles unless told to. */
function render(tex: string): string | undefined {
    try {
        return temml.renderToString(`\\displaystyle ${tex}`, { throwOnError: true, strict: true, trust: false });
    } catch {
        return undefined;
    }
}

/** The words of a subscript (`k_{mod}`) are set upright, not as a product of letters. */
function uprightWords(tex: string): string {
    return tex.replace(/_\{([^{}]*)\}/g, (_, inside: string) =>
        `_{${inside.replace(/(?<![\\a-zA-Z])[a-zA-Z](?: [a-zA-Z])+(?![a-zA-Z])/g, word => `\\mathrm{${word.replaceAll(' ', '')}}`)}}`);
}

function valueToTex(amount: Amount): string {
    const { number, unit } = amountParts(amount);
    const digits = /^−?[0-9.,]+$/.test(number) ? number.replace('−', '-').replace(',', '{,}') : text(number);
    return unit === '' ? `{${digits}}` : `{${digits}\\,${text(unit)}}`;
}

function text(plain: string): string {
    return `\\text{${plain.replace(/[\\{}$&#^_%~]/g, character => character === '\\' ? '∖' : character === '~' || character === '^' ? ' ' : `\\${character}`)}}`;
}
