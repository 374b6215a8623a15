/** The drawings' style sheet applied by hand: a PDF has no style sheets, and what is drawn is to look the same everywhere. */
import { compile } from 'css-select';
import type { Element } from 'domhandler';
import { drawingStyle } from '../style/drawing.js';
import { onPaper } from './colours.js';

type Declarations = Readonly<Record<string, string>>;

interface Rule {
    readonly matches: (element: Element) => boolean;
    readonly weight: number;
    readonly declarations: Declarations;
}

/** What paints a shape; the rest of the rules is about boxes on a screen. */
const painted = new Set(['fill', 'stroke', 'stroke-width', 'stroke-dasharray', 'stroke-linejoin', 'stroke-linecap', 'opacity', 'font-weight', 'font-style', 'font-size', 'text-anchor']);

const rules: readonly Rule[] = [...drawingStyle.replace(/\/\*[^]*?\*\//g, '').matchAll(/([^{}]+)\{([^{}]*)\}/g)]
    .flatMap(([, selectors = '', body = '']) => selectors.split(',').map(selector => selector.trim()).filter(selector => selector !== '' && !/[@:]/.test(selector)).map(selector => ({
        matches: compile<Element, Element>(selector),
        weight: weightOf(selector),
        declarations: declarationsOf(body)
    })))
    .filter(({ declarations }) => Object.keys(declarations).length > 0);

/** Classes count before elements, as in CSS; the drawings' rules have no ids. */
function weightOf(selector: string): number {
    return 100 * (selector.match(/[.[]/g) ?? []).length + (selector.match(/(?:^|[\s>+~])[a-z]/g) ?? []).length;
}

function declarationsOf(body: string): Declarations {
    const all = body.split(';').map(line => line.split(':')).filter(parts => parts.length === 2).map(([name, value]) => [name!.trim(), value!.trim()] as const);
    return Object.fromEntries(all.flatMap(([name, value]) => name === 'font' ? [['font-size', /([\d.]+)px/.exec(value)?.[1] ?? '11'] as const]
        : painted.has(name) ? [[name, onPaper(value)] as const] : []));
}

/** The declarations that hold of one element, without those that it inherits. */
export function styleOf(element: Element): Declarations {
    const found = rules.filter(({ matches }) => matches(element)).sort((a, b) => a.weight - b.weight);
    return Object.assign({}, ...found.map(({ declarations }) => declarations)) as Declarations;
}
