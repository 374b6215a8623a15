/** The survey: what was looked for, what is known of it, and a note; `damp source fixed "valley relined"`. */
import * as ast from '../generated/ast.js';
import type { Model, SourceRef, SurveyItem } from '../model.js';
import type { Context } from './context.js';
import { fail, source } from './context.js';

export const surveyStates: readonly string[] = [
    'checked', 'not checked', 'found', 'not found', 'fixed', 'not fixed', 'known', 'not known', 'pending', 'granted', 'refused', 'needed', 'not needed'
];

interface Line { readonly words: readonly ast.SurveyPart[]; readonly note?: string }

export function evaluateSurvey(context: Context, root: ast.Calculation): Model['survey'] {
    const blocks = root.declarations.filter(ast.isSurvey);
    const items = blocks.flatMap(block => lines(context, block)).flatMap(line => itemOf(context, line));
    return blocks[0] && { items, source: source(context, blocks[0]) };
}

/** A line of the text, or less: a state or a note ends an item. */
function lines(context: Context, block: ast.Survey): readonly Line[] {
    const found: { words: ast.SurveyPart[]; note?: string; line: number }[] = [];
    for (const part of block.parts) {
        const { line } = source(context, part);
        const current = found.at(-1);
        if (part.note !== undefined) {
            if (current !== undefined && current.note === undefined) {
                current.note = part.note;
            } else {
                fail(context, 'stray-note', 'this note belongs to nothing', source(context, part));
            }
        } else if (part.word !== undefined) {
            if (current === undefined || current.note !== undefined || current.line !== line || stateOf(current.words) !== undefined) {
                found.push({ words: [part], line });
            } else {
                current.words.push(part);
            }
        }
    }
    return found;
}

/** The state that the last words are, `not` taken in. */
function stateOf(words: readonly ast.SurveyPart[]): { readonly state: string; readonly count: number } | undefined {
    const state = [2, 1].map(count => ({ state: words.slice(-count).map(part => part.word).join(' '), count }));
    return state.find(({ state, count }) => count < words.length && surveyStates.includes(state));
}

function itemOf(context: Context, { words, note }: Line): readonly SurveyItem[] {
    const at = span(source(context, words[0]!), source(context, words.at(-1)!));
    const known = stateOf(words);
    const text = words.map(part => part.word).join(' ');
    if (known === undefined) {
        fail(context, 'unknown-survey-state', `what is known of '${text}' is not said: one of ${surveyStates.join(', ')}`, at);
        return [];
    }
    const subject = words.slice(0, words.length - known.count).map(part => part.word).join(' ');
    return [{ subject, state: known.state, ...(note !== undefined && { note }), source: at }];
}

const span = (from: SourceRef, to: SourceRef): SourceRef => ({ ...from, end: to.end });
