/** A hazard: that it was dealt with, by a line that answers it, or by the line of the survey that it asks for. */
import * as ast from '../../../../language/src/generated/ast.js';
import type { Hazard } from '../../results.js';
import type { FindingPlace, Mending, MendingOf } from './place.js';

export const answerHazard: MendingOf = place => {
    const { computed: { results, text }, finding } = place;
    const hazard = results.hazards.find(({ code, source, answer }) => answer === undefined && code === finding.code && source.start === finding.source.start && source.file === finding.source.file);
    if (!hazard) {
        return [];
    }
    const end = text.getText().trimEnd().length;
    const isNamed = [...results.members, ...results.hangers].some(({ name }) => name === hazard.subject);
    const line = `answer ${hazard.code}${isNamed ? ` on ${hazard.subject}` : ''} "…" (documented "…")`;
    return [...surveyLine(place, hazard), { title: `Answer it: ${line}`, at: end, text: `\n\n${line}` }];
};

/** As the hazard says it: `then write services checked "…" in the survey`. */
function surveyLine({ document, computed: { text } }: FindingPlace, { action }: Hazard): readonly Mending[] {
    const line = /write (.+? "…") in the survey/.exec(action)?.[1];
    const root = document.parseResult.value;
    if (line === undefined || !ast.isCalculation(root)) {
        return [];
    }
    const survey = root.declarations.find(ast.isSurvey)?.$cstNode;
    const inside = survey && survey.offset + survey.text.indexOf('{') + 1;
    return [{
        title: `Write in the survey: ${line}`,
        ...inside !== undefined ? { at: inside, text: `\n  ${line}` } : { at: text.getText().trimEnd().length, text: `\n\nsurvey {\n  ${line}\n}` }
    }];
}
