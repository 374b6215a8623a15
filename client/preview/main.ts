import morphdom from 'morphdom';
import { blockAt } from './follow.js';
import type { FromPage, PageState, Render, ToPage } from './messages.js';

declare function acquireVsCodeApi(): {
    postMessage(message: FromPage): void;
    getState(): PageState | undefined;
    setState(state: PageState): void;
};

/** An element of the sheet that may say which line it comes from. */
type Placed = HTMLElement | SVGElement;

const vscode = acquireVsCodeApi();
const sheet = document.getElementById('sheet')!;
const style = document.getElementById('sheet-style')!;
const banner = document.getElementById('banner')!;
const uri = document.body.dataset['uri']!;

/** ms that the sheet may lag behind the text before the page says so. */
const lag = 700;
let lagTimer: ReturnType<typeof setTimeout> | undefined;

const state = vscode.getState();
const kept = state?.uri === uri ? state : undefined;
const folds: Record<string, boolean> = { ...kept?.folds };
let scrollToRestore = kept?.scroll ?? 0;
let cursorLine = kept?.line;
/** The block that the cursor is at. */
let cursor: Element | undefined;

window.addEventListener('message', (event: MessageEvent<ToPage>) => {
    const message = event.data;
    switch (message.type) {
        case 'render':
            return render(message);
        case 'changed':
            return expectRender();
        case 'failed':
            return warn(`Out of date. ${message.reason}`);
        case 'cursor':
            return followCursor(message.line);
    }
});

function render(message: Render): void {
    if (style.textContent !== message.css) {
        style.textContent = message.css;
    }
    const next = document.createElement('main');
    next.innerHTML = message.html;
    for (const details of next.querySelectorAll('details')) {
        details.open = folds[foldKey(details)] ?? details.open;
    }
    morphdom(sheet, next, {
        childrenOnly: true,
        onBeforeElUpdated: (from, to) => {
            to.classList.toggle('at-cursor', from === cursor);
            return !from.isEqualNode(to);
        }
    });
    clearTimeout(lagTimer);
    lagTimer = undefined;
    if (message.stale !== undefined) {
        warn(`Out of date. ${message.stale}`);
    } else {
        banner.hidden = true;
        sheet.classList.remove('stale');
    }
    if (!message.current) {
        expectRender();
    }
    window.scrollTo(0, scrollToRestore || window.scrollY);
    scrollToRestore = 0;
    save();
}

/** The sheet lags behind the text: soon said, but not for the blink of an eye that it mostly takes. */
function expectRender(words = 'Out of date. The newest text is being calculated.'): void {
    lagTimer ??= setTimeout(() => warn(words), lag);
}

function warn(text: string): void {
    banner.textContent = text;
    banner.hidden = false;
    sheet.classList.add('stale');
}

function followCursor(line: number): void {
    const elements = [...sheet.querySelectorAll<Placed>('[data-line]')].filter(element => element.checkVisibility());
    const index = blockAt(elements.map(element => ({ line: lineOf(element), height: element.getBoundingClientRect().height })), line);
    const block = index === undefined ? undefined : blockOf(elements[index]!);
    // On the same line as before nothing scrolls: the reader may have gone to look elsewhere.
    if (block !== undefined && line !== cursorLine) {
        const { top } = block.getBoundingClientRect();
        if (top < 0 || top > window.innerHeight * 0.7) {
            window.scrollBy(0, top - 16);
        }
    }
    mark(block, line);
}

function lineOf(element: Placed): number {
    return Number(element.dataset['line']);
}

/** What is scrolled to and marked whole: not a lone word or stroke, but the row or figure that it is in. */
function blockOf(element: Placed): Element {
    return element.closest('figure, details, tr, li, section, header') ?? element;
}

function mark(block: Element | undefined, line: number): void {
    cursor?.classList.remove('at-cursor');
    block?.classList.add('at-cursor');
    cursor = block;
    cursorLine = line;
    save();
}

sheet.addEventListener('click', event => {
    const clicked = event.target as Element;
    const element = clicked.closest<Placed>('[data-line]');
    if (element === null || clicked.closest('a:not([data-line]), summary') !== null || !getSelection()!.isCollapsed) {
        return;
    }
    mark(blockOf(element), lineOf(element));
    vscode.postMessage({ type: 'reveal', line: lineOf(element) });
});

sheet.addEventListener('toggle', event => {
    const details = event.target as HTMLDetailsElement;
    folds[foldKey(details)] = details.open;
    save();
}, true);

/** Ids are the sheet's own names of things (`T2.bending`): they outlive an edit elsewhere, as positions do not. */
function foldKey(details: Element): string {
    return details.id || details.querySelector('summary')?.textContent || '';
}

let scrollTimer: ReturnType<typeof setTimeout> | undefined;
window.addEventListener('scroll', () => {
    scrollTimer ??= setTimeout(() => {
        scrollTimer = undefined;
        save();
    }, 50);
});

function save(): void {
    vscode.setState({ uri, scroll: scrollToRestore || window.scrollY, line: cursorLine, folds });
}

save();
expectRender('The sheet is being calculated.');
vscode.postMessage({ type: 'ready' });
