/** Reading the sheet's HTML in tests with a real parser. */
import { parse, type DefaultTreeAdapterTypes as Tree } from 'parse5';

export interface Parsed {
    readonly errors: readonly string[];
    readonly elements: readonly Tree.Element[];
}

export function parseHtml(html: string): Parsed {
    const errors: string[] = [];
    const document = parse(html, { sourceCodeLocationInfo: true, onParseError: error => errors.push(`${error.code} at ${error.startLine}:${error.startCol}`) });
    return { errors, elements: elementsIn(document) };
}

export function elementsIn(node: Tree.Node): Tree.Element[] {
    const children = 'childNodes' in node ? node.childNodes : [];
    return [...('tagName' in node ? [node] : []), ...children.flatMap(elementsIn)];
}

export function attribute(element: Tree.Element, name: string): string | undefined {
    return element.attrs.find(attr => attr.name === name)?.value;
}

export function byId({ elements }: Parsed, id: string): Tree.Element {
    const found = elements.filter(element => attribute(element, 'id') === id);
    if (found.length !== 1) {
        throw new Error(`${found.length} elements have the id ${id}`);
    }
    return found[0]!;
}

/** The text of an element as a reader sees it, white space folded; style rules are no text. */
export function textOf(node: Tree.Node): string {
    return raw(node).replace(/\s+/g, ' ').trim();
}

function raw(node: Tree.Node): string {
    if (node.nodeName === '#text') {
        return (node as Tree.TextNode).value;
    }
    return node.nodeName === 'style' || !('childNodes' in node) ? '' : node.childNodes.map(raw).join(blocks.has(node.nodeName) ? ' ' : '');
}

const blocks = new Set(['tr', 'td', 'th', 'section', 'header', 'div', 'p', 'li', 'svg', 'g', 'figure', 'details', 'summary', 'main', 'dl', 'ol', 'ul', 'tbody', 'table', 'math', 'mrow']);
