import { subjectSummary } from '../../summary.js';
import { checksTable } from '../markdown.js';
import { sourceOf, type HoverOf } from './place.js';

/** The name of a member or hanger, wherever it stands: the table of its checks. */
export const hoverMember: HoverOf = ({ computed: { results }, word }) => {
    const summary = word && subjectSummary(results, word.text);
    return word && summary ? { markdown: checksTable(summary), source: sourceOf(word) } : undefined;
};
