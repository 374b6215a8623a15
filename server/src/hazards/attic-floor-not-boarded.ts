import { surveyItems, type HazardRule } from './hazard-rule.js';

/** Lath and plaster between joists carries nobody. Said where the survey has a line on it. Common practice, no source. */
export const atticFloorNotBoarded: HazardRule = {
    code: 'attic-floor-not-boarded',
    find: context => surveyItems(context, /^(attic|loft)\b|\bboard(s|ed|ing)\b/i)
        .filter(({ state }) => !/^(checked|fixed|known|found|not needed)/i.test(state))
        .map(({ subject, state, source }) => ({
            severity: 'warn' as const,
            subject: 'survey',
            message: `Whether the attic floor bears a person is open: ${subject} ${state}`,
            action: 'Lay boards across the joists wherever anybody works, never step between joists, and keep people out of the room below.',
            decider: 'you',
            source
        }))
};
