/** The sheet's HTML as blocks. What is no block of its own (sections, groups) gives way to what it holds. */
import { isTag, type AnyNode, type Element } from 'domhandler';
import { findAll, findOne, textContent } from 'domutils';
import type { Block, Cell, Definition, Row } from './blocks.js';
import { hasClass, outcomeOf, readCell, readText } from './read-text.js';

export function readBlocks(nodes: readonly AnyNode[], inherited: readonly string[] = []): Block[] {
    const blocks: Block[] = [];
    let loose: AnyNode[] = [];
    let ids = inherited;
    /** Text that stands beside blocks is a paragraph. */
    const settle = (): void => {
        const text = readText(loose);
        loose = [];
        if (text.length > 0) {
            blocks.push({ kind: 'paragraph', ids, text });
            ids = [];
        }
    };
    for (const node of nodes) {
        if (isTag(node) && !inline.has(node.name)) {
            settle();
            const found = readElement(node, [...ids, ...idOf(node)]);
            ids = found.length > 0 ? [] : [...ids, ...idOf(node)];
            blocks.push(...found);
        } else {
            loose.push(node);
        }
    }
    settle();
    return blocks;
}

const inline = new Set(['span', 'b', 'strong', 'i', 'em', 'a', 'code', 'sub', 'sup', 'br']);
const headings: Readonly<Record<string, 1 | 2 | 3>> = { h1: 1, h2: 2, h3: 3, h4: 3 };
const idOf = (element: Element): string[] => element.attribs.id ? [element.attribs.id] : [];

function readElement(element: Element, ids: readonly string[]): Block[] {
    const level = headings[element.name];
    if (level) {
        return [{ kind: 'heading', ids, level, text: readText(element.children) }];
    }
    if (hasClass(element, 'formula')) {
        return [{ kind: 'formula', ids, text: readText(element.children) }];
    }
    if (hasClass(element, 'verdict')) {
        return [{ kind: 'box', ids, outcome: outcomeOf(element) ?? 'incomplete', blocks: readBlocks(element.children) }];
    }
    if (hasClass(element, 'drawings') || hasClass(element, 'multiples')) {
        return [{ kind: 'row', ids, blocks: readBlocks(element.children) }];
    }
    switch (element.name) {
        case 'p': return paragraph(element, ids);
        case 'ul':
        case 'ol': return [{ kind: 'list', ids, ordered: element.name === 'ol', items: childrenOf(element).map(item => readBlocks(item.children, idOf(item))) }];
        case 'table': return [readTable(element, ids)];
        case 'dl': return [{ kind: 'definitions', ids, entries: childrenOf(element).map(readDefinition) }];
        case 'details': return [readFold(element, ids)];
        case 'svg': return readDrawing(element, ids, undefined);
        case 'figure': return readFigure(element, ids);
        case 'style':
        case 'script': return [];
        default: return readBlocks(element.children, ids);
    }
}

const childrenOf = (element: Element): Element[] => element.children.filter(isTag);

function paragraph(element: Element, ids: readonly string[]): Block[] {
    const text = readText(element.children, hasClass(element, 'small') ? { small: true } : {});
    return text.length > 0 ? [{ kind: 'paragraph', ids, text }] : [];
}

function readDefinition(entry: Element): Definition {
    const part = (name: string): AnyNode[] => childrenOf(entry).find(child => child.name === name)?.children ?? [];
    return { ids: idOf(entry), term: readText(part('dt')), text: readText(part('dd')) };
}

function readFold(element: Element, ids: readonly string[]): Block {
    const summary = childrenOf(element).find(({ name }) => name === 'summary');
    return { kind: 'fold', ids, summary: readText(summary?.children ?? []), blocks: readBlocks(element.children.filter(child => child !== summary)) };
}

function readTable(element: Element, ids: readonly string[]): Block {
    const rows = findAll(({ name }) => name === 'tr', element.children);
    const [head, body] = [rows.filter(isHead), rows.filter(row => !isHead(row))];
    return { kind: 'table', ids, head: head.flatMap(childrenOf).map(cell => readText(cell.children)), rows: body.map(readRow) };
}

const isHead = ({ parent }: Element): boolean => parent !== null && isTag(parent) && parent.name === 'thead';

function readRow(row: Element): Row {
    const within = findAll(({ attribs }) => Boolean(attribs.id), row.children).flatMap(idOf);
    return { ids: [...idOf(row), ...within], cells: childrenOf(row).map(readTableCell) };
}

function readTableCell(cell: Element): Cell {
    return {
        text: readCell(cell.children),
        span: Number(cell.attribs.colspan ?? 1),
        isNumber: hasClass(cell, 'number'),
        bar: findOne(element => element.name === 'svg', cell.children, true) ?? undefined
    };
}

/** A figure's other content (tables beside the drawing) follows it. */
function readFigure(figure: Element, ids: readonly string[]): Block[] {
    const caption = childrenOf(figure).find(({ name }) => name === 'figcaption');
    const drawn = findAll(({ name, attribs }) => name === 'svg' && attribs['aria-hidden'] !== 'true', figure.children);
    const rest = readBlocks(figure.children.filter(child => child !== caption && !(isTag(child) && child.name === 'svg')));
    return [...drawn.flatMap((svg, i) => readDrawing(svg, i === 0 ? ids : [], i === drawn.length - 1 ? caption : undefined)), ...rest.filter(({ kind }) => kind !== 'drawing')];
}

function readDrawing(svg: Element, ids: readonly string[], caption: Element | undefined): Block[] {
    const part = (name: string): string => textContent(childrenOf(svg).filter(child => child.name === name)).trim();
    return svg.attribs['aria-hidden'] === 'true' ? []
        : [{ kind: 'drawing', ids, title: part('title'), description: part('desc'), svg, caption: readText(caption?.children ?? []) }];
}
