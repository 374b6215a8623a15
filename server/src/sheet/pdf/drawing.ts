/** A drawing of the sheet as an SVG that says by itself how it is painted. */
import { isTag, isText, type AnyNode, type Element, type ParentNode } from 'domhandler';
import { findOne } from 'domutils';
import { escapeHtml as escapeXml } from '../markdown/escape.js';
import { fontFamily } from './fonts.js';
import { styleOf } from './style-rules.js';

export interface Drawn {
    readonly svg: string;
    /** As on the screen, in its pixels. */
    readonly width: number;
    readonly height: number;
}

/** Attributes that the parser has put into lower case. */
const spelled: Readonly<Record<string, string>> = { viewbox: 'viewBox', patternunits: 'patternUnits', patterntransform: 'patternTransform', preserveaspectratio: 'preserveAspectRatio' };
const left = /^(class|id|role|aria-.*|data-.*|xmlns|tabindex|focusable)$/;

export function drawn(svg: Element): Drawn {
    const [, , boxWidth = 100, boxHeight = 100] = (svg.attribs.viewbox ?? '').split(/[\s,]+/).map(Number);
    const [width, height] = [Number(svg.attribs.width ?? boxWidth), Number(svg.attribs.height ?? boxHeight)];
    const patterns = new Map<string, Element>();
    const inside = svg.children.map(child => write(child, svg, patterns)).join('');
    const defined = [...patterns].map(([id, pattern]) => `<pattern id="${id}"${attributes(pattern)}>${pattern.children.map(child => write(child, svg, patterns)).join('')}</pattern>`).join('');
    return { svg: `<svg xmlns="http://www.w3.org/2000/svg"${attributes(svg, { width: String(width), height: String(height) })}><defs>${defined}</defs>${inside}</svg>`, width, height };
}

function write(node: AnyNode, svg: Element, patterns: Map<string, Element>): string {
    if (isText(node)) {
        return escapeXml(node.data);
    }
    if (!isTag(node) || node.name === 'title' || node.name === 'desc') {
        return '';
    }
    const style = styleOf(node);
    for (const id of Object.values(style).flatMap(value => /^url\(#(.+)\)$/.exec(value)?.[1] ?? [])) {
        const pattern = patterns.has(id) ? undefined : patternOf(svg, id);
        if (pattern) {
            patterns.set(id, pattern);
        }
    }
    const inside = node.children.map(child => write(child, svg, patterns)).join('');
    return node.name === 'text' ? text(node, style, inside) : `<${node.name}${attributes(node, style)}>${inside}</${node.name}>`;
}

/** Its halo first, which a browser would paint below the letters by itself. */
function text(node: Element, style: Readonly<Record<string, string>>, inside: string): string {
    const halo = { ...style, 'font-family': fontFamily, fill: 'none' };
    const letters = { ...style, 'font-family': fontFamily, stroke: 'none' };
    return [halo, letters].map(painted => `<text${attributes(node, painted)}>${inside}</text>`).join('');
}

function attributes(element: Element, style: Readonly<Record<string, string>> = {}): string {
    const own = Object.entries(element.attribs).filter(([name]) => !left.test(name)).map(([name, value]) => [spelled[name] ?? name, value] as const);
    return Object.entries({ ...Object.fromEntries(own), ...style }).map(([name, value]) => ` ${name}="${escapeXml(value)}"`).join('');
}

/** The hatches are defined once in the sheet. */
function patternOf(svg: Element, id: string): Element | undefined {
    let root: ParentNode = svg;
    while (root.parent) {
        root = root.parent;
    }
    return findOne(element => element.name === 'pattern' && element.attribs.id === id, root.children, true) ?? undefined;
}
