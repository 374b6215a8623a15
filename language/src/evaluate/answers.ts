/** What was done about hazards; which hazards there are is not known here. */
import * as ast from '../generated/ast.js';
import type { Answer } from '../model.js';
import type { Context } from './context.js';
import { attempt, fail, source } from './context.js';
import { evidenceOf } from './inputs.js';
import { isAnything } from './named-quantities.js';
import { resolve } from './names.js';

export function evaluateAnswers(context: Context, root: ast.Calculation, unsound: ReadonlySet<ast.Declaration>): readonly Answer[] {
    const first = new Map<string, ast.Answer>();
    return root.declarations.filter(ast.isAnswer).flatMap(node => {
        const { value, sound } = attempt(context, () => evaluateAnswer(context, node));
        if (value === undefined || !sound || unsound.has(node)) {
            return [];
        }
        const key = `${value.hazard}${value.subject === undefined ? '' : ` on ${value.subject}`}`;
        const before = first.get(key);
        if (before !== undefined) {
            fail(context, 'answered-twice', `${key} is answered already`, source(context, node), { related: [{ message: 'the first answer is here', source: source(context, before) }] });
            return [];
        }
        first.set(key, node);
        return [value];
    });
}

function evaluateAnswer(context: Context, node: ast.Answer): Answer | undefined {
    const { hazard, what } = node;
    const subject = node.subject && subjectOf(context, node);
    if (hazard === undefined || what === undefined || (node.subject && subject === undefined)) {
        return undefined;
    }
    if (what.trim() === '') {
        return fail(context, 'empty-answer', 'what was done is not said', source(context, node, 'what'));
    }
    if (node.evidence === undefined) {
        return fail(context, 'no-evidence', 'how this is known is not said: add it behind, such as (measured) or (documented "report of 3 May")', source(context, node));
    }
    return { hazard, ...(subject !== undefined && { subject }), what, evidence: evidenceOf(node.evidence), source: source(context, node) };
}

/** Of a detail that makes several things one is named: `P.left`. */
function subjectOf(context: Context, node: ast.Answer): string | undefined {
    const thing = resolve(context, node.subject, node, isAnything, 'anything that has hazards');
    if (thing === undefined) {
        return undefined;
    }
    const name = [thing.name, ...node.path].join('.');
    const made = ast.isUse(thing) ? context.made.get(thing.name) ?? [thing.name] : [thing.name];
    return made.includes(name) ? name
        : fail(context, 'unknown-name', made.length > 1 ? `${thing.name} is several: ${made.join(', ')}` : `there is no ${name}`, source(context, node, 'subject'));
}
