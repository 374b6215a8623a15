import { drilled } from './drilled.js';
import { surveyItems, type HazardRule } from './hazard-rule.js';
import { joined } from './telling.js';

/** A drill finds the cable that nobody looked for; where nothing is drilled it is well to know. Common practice, no source. */
export const servicesUnknown: HazardRule = {
    code: 'services-unknown',
    find: context => {
        const items = surveyItems(context, /services/i);
        const known = items.length > 0 && items.every(item => /^(checked|known)/i.test(item.state));
        const holes = drilled(context.model);
        return known || context.model.members.length === 0 ? [] : [{
            severity: holes.length > 0 ? 'warn' : 'note',
            subject: 'survey',
            message: `Cables, pipes and ducts in the way of drilling or cutting are not known${holes.length > 0 ? `, and ${joined(holes)} ${holes.length === 1 ? 'is' : 'are'} drilled for` : ''}`,
            action: 'Trace them and isolate what runs there before any hole is drilled; then write services checked "…" in the survey.',
            decider: 'you',
            source: items[0]?.source ?? context.model.survey?.source ?? context.model.job.source
        }];
    }
};
