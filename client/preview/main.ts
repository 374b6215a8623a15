import morphdom from 'morphdom';
import { blockAt, inView, type Block } from './follow.js';
import type { FromPage, PageState, Render, ToPage } from './messages.js';

declare function acquireVsCodeApi(): {
    postMessage(message: FromPage): void;
    getState(): PageState | undefined;
    setState(state: PageState): void;
};

const vscode = acquireVsCodeApi();
const sheet = document.getElementById('sheet')!;
const style = document.getElementById('sheet-style')!;
const banner = document.getElementById('banner')!;
const uri = document.body.dataset['uri']!;

/** ms that the sheet may lag behind the text before the page says so. */
const lag = 700;
let lagTimer: ReturnType<typeof setTimeout> | undefined;

const kept = vscode.getState();
const folds: Record<string, boolean> = kept?.uri === uri ? { ...kept.folds } : {};
let scrollToRestore = kept?.uri === uri ? kept.scroll : 0;
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
function expectRender(): void {
    lagTimer ??= setTimeout(() => warn('Out of date. The newest text is being calculated.'), lag);
}

function warn(text: string): void {
    banner.textContent = text;
    banner.hidden = false;
    sheet.classList.add('stale');
}

function followCursor(line: number): void {
    const elements = [...sheet.querySelectorAll<HTMLElement | SVGElement>('[data-line]')];
    const blocks = elements.map((element): Block => {
        const { top, bottom } = element.getBoundingClientRect();
        return { line: Number(element.dataset['line']), top, bottom };
    });
    const index = blockAt(blocks, line, window.innerHeight);
    const element = index === undefined ? undefined : elements[index];
    if (index !== undefined && element !== cursor && !inView(blocks[index]!, window.innerHeight)) {
        window.scrollBy(0, blocks[index]!.top - 16);
    }
    mark(element);
}

function mark(element: Element | undefined): void {
    cursor?.classList.remove('at-cursor');
    element?.classList.add('at-cursor');
    cursor = element;
}

sheet.addEventListener('click', event => {
    const clicked = event.target as Element;
    const block = clicked.closest<HTMLElement | SVGElement>('[data-line]');
    if (block === null || clicked.closest('a:not([data-line]), summary') !== null || !getSelection()!.isCollapsed) {
        return;
    }
    mark(block);
    vscode.postMessage({ type: 'reveal', line: Number(block.dataset['line']) });
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
    vscode.setState({ uri, scroll: scrollToRestore || window.scrollY, folds });
}

save();
vscode.postMessage({ type: 'ready' });
