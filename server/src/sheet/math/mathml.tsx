import temml from 'temml';
import type { Amount } from '../../results.js';
import { amountParts } from '../numbers.js';
import { texToText } from '../plain-math.js';
import { parseTex, printTex, type Row } from './tex.js';

/** A formula as MathML; as plain text where TeX is not understood. */
export function Formula({ row, lead = '' }: { readonly row: Row; readonly lead?: string }) {
    const tex = lead + uprightWords(printTex(row, valueToTex, ' \\, '));
    const mathml = toMathml(tex);
    return mathml === undefined ? <code>{texToText(tex)}</code> : <span class="math" dangerouslySetInnerHTML={{ __html: mathml }} />;
}

export function Tex({ tex }: { readonly tex: string }) {
    return <Formula row={parseTex(tex)} />;
}

/** Enough for the formulas of a big file; emptied when full, since what is typed leaves its numbers behind. */
const memoLimit = 4000;
const memo = new Map<string, string | undefined>();

function toMathml(tex: string): string | undefined {
    if (!memo.has(tex)) {
        if (memo.size >= memoLimit) {
            memo.clear();
        }
        memo.set(tex, render(tex));
    }
    return memo.get(tex);
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
    const digits = /^−?[0-9.]+$/.test(number) ? number.replace('−', '-') : text(number);
    return unit === '' ? `{${digits}}` : `{${digits}\\,${text(unit)}}`;
}

function text(plain: string): string {
    return `\\text{${plain.replace(/[\\{}$&#^_%~]/g, character => character === '\\' ? '∖' : character === '~' || character === '^' ? ' ' : `\\${character}`)}}`;
}
