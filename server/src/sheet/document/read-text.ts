/** Text of the sheet's HTML as runs in one style each. */
import { isTag, isText, type AnyNode, type Element } from 'domhandler';
import type { Outcome, Run, Text } from './blocks.js';

export function hasClass(element: Element, name: string): boolean {
    return (element.attribs.class ?? '').split(/\s+/).includes(name);
}

export function outcomeOf(element: Element): Outcome | undefined {
    return (['pass', 'fail', 'incomplete'] as const).find(outcome => hasClass(element, outcome));
}

type Style = Omit<Run, 'text' | 'breaks'>;

/** White space folded, as a browser does. */
export function readText(nodes: readonly AnyNode[], style: Style = {}): Text {
    return folded(runs(nodes, style, false));
}

/** @param inBlocks what a style sheet sets as blocks stands on lines of its own */
export function readCell(nodes: readonly AnyNode[]): Text {
    return folded(runs(nodes, {}, true));
}

function runs(nodes: readonly AnyNode[], style: Style, inCell: boolean): Run[] {
    return nodes.flatMap(node => isText(node) ? [{ ...style, text: node.data.replace(/[ \t\n\r]+/g, ' ') }]
        : isTag(node) && node.name !== 'svg' ? ofElement(node, style, inCell) : []);
}

/** Elements that a cell sets on a line of their own. */
const lines = new Set(['p', 'div', 'li', 'br']);

function ofElement(element: Element, style: Style, inCell: boolean): Run[] {
    const inside = runs(element.children, { ...style, ...styleOf(element) }, inCell);
    const alone = lines.has(element.name) || (inCell && (hasClass(element, 'small') || hasClass(element, 'title')));
    return alone ? [{ text: '', breaks: true }, ...inside, { text: '', breaks: true }] : inside;
}

function styleOf(element: Element): Style {
    const { href } = element.attribs;
    return {
        ...((element.name === 'b' || element.name === 'strong') && { bold: true }),
        ...(element.name === 'code' && { code: true }),
        ...((element.name === 'sub' || element.name === 'sup') && { script: element.name }),
        ...((hasClass(element, 'small') || hasClass(element, 'line')) && { small: true }),
        ...(hasClass(element, 'outcome') && { outcome: outcomeOf(element) }),
        ...(href?.startsWith('#') && { target: href.slice(1) })
    };
}

/** Without empty runs, doubled spaces and breaks, or spaces at the ends of a line; neighbours of one style joined. */
function folded(given: readonly Run[]): Text {
    const text: Run[] = [];
    let breaks = false;
    for (const run of given) {
        breaks ||= run.breaks ?? false;
        const before = text.at(-1);
        const starts = before === undefined || breaks || before.text.endsWith(' ');
        const shown = { ...run, text: starts ? run.text.replace(/^ +/, '') : run.text, breaks: breaks && before !== undefined };
        if (shown.text === '') {
            continue;
        }
        if (before && !breaks && sameStyle(before, shown)) {
            text[text.length - 1] = { ...before, text: before.text + shown.text };
        } else {
            text.push(shown);
        }
        breaks = false;
    }
    return text.map((run, i) => i === text.length - 1 || text[i + 1]!.breaks ? { ...run, text: run.text.replace(/ +$/, '') } : run)
        .filter(run => run.text !== '' || run.breaks);
}

function sameStyle(one: Run, other: Run): boolean {
    return one.bold === other.bold && one.small === other.small && one.code === other.code && one.script === other.script
        && one.target === other.target && one.outcome === other.outcome;
}
