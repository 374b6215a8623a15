import { surveyItems, type HazardRule } from './hazard-rule.js';

/** Common practice, no source. */
export const servicesUnknown: HazardRule = {
    code: 'services-unknown',
    find: context => {
        const items = surveyItems(context, /services/i);
        const known = items.length > 0 && items.every(item => /^checked/i.test(item.state));
        return known || context.model.members.length === 0 ? [] : [{
            severity: 'warn',
            subject: 'survey',
            message: 'Cables, pipes and ducts in the way of drilling or cutting are not known',
            action: 'Trace them and isolate what runs there before any hole is drilled; then write services checked "…" in the survey.',
            decider: 'you',
            source: items[0]?.source ?? context.model.survey?.source ?? context.model.job.source
        }];
    }
};
