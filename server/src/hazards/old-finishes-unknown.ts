import { surveyItems, type HazardRule } from './hazard-rule.js';

/** Old finishes may hold asbestos, old paint lead: both are to be known before anything is disturbed. Common practice, no source. */
export const oldFinishesUnknown: HazardRule = {
    code: 'old-finishes-unknown',
    find: context => {
        const items = surveyItems(context, /asbestos|lead/i);
        const open = items.filter(item => !/^(checked|none|not needed)/i.test(item.state));
        if (context.model.members.length === 0 || (items.length > 0 && open.length === 0)) {
            return [];
        }
        return [{
            severity: 'warn',
            subject: 'survey',
            message: 'Old finishes have not been checked for asbestos or lead',
            action: 'Have samples taken before a ceiling, board or paint is disturbed; then write asbestos checked "…" in the survey.',
            decider: 'a competent surveyor',
            source: open[0]?.source ?? context.model.survey?.source ?? context.model.job.source
        }];
    }
};
