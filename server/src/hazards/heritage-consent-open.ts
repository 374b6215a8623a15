import { surveyItems, type HazardRule } from './hazard-rule.js';

/** Work on a listed building without consent is an offence in many countries; local law decides. */
export const heritageConsentOpen: HazardRule = {
    code: 'heritage-consent-open',
    find: context => surveyItems(context, /heritage|listed|conservation/i)
        .filter(item => !/^(granted|given|not needed|none)/i.test(item.state))
        .map(item => ({
            severity: 'warn' as const,
            subject: 'survey',
            message: `Heritage consent is ${item.state}`,
            action: 'Do not start, not even to open up, before the consent is given.',
            decider: 'conservation officer',
            source: item.source
        }))
};
