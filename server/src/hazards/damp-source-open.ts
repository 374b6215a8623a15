import { surveyItems, type HazardRule } from './hazard-rule.js';

/** Decay goes on while the water comes in. Common practice, no source. */
export const dampSourceOpen: HazardRule = {
    code: 'damp-source-open',
    find: context => {
        const decayed = context.model.members.filter(member => member.losses.length > 0);
        const items = surveyItems(context, /damp/i);
        const closed = items.length > 0 && items.every(item => /^(fixed|cured|none|not needed)/i.test(item.state));
        return decayed.length === 0 || closed ? [] : [{
            severity: 'warn',
            subject: decayed.map(member => member.name).join(', '),
            message: 'The source of the damp is not known to be stopped, so the loss may still grow',
            action: 'Find and stop it, let the timber dry, probe again; then write damp source fixed "…" in the survey.',
            decider: 'you',
            source: items[0]?.source ?? decayed[0]!.losses[0]!.source
        }];
    }
};
