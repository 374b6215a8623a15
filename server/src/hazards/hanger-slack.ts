import type { HazardRule } from './hazard-rule.js';
import { joined, kilonewtons } from './telling.js';

/** A rod cannot push: where the analysis lets it, what it finds is not what would be. Statics. */
export const hangerSlack: HazardRule = {
    code: 'hanger-slack',
    find: ({ model, actions }) => {
        const slack = (actions.hangers ?? []).filter(one => one.slack);
        const first = model.hangers.find(({ name }) => name === slack[0]?.hanger);
        return first === undefined ? [] : [{
            severity: 'stop',
            subject: joined(slack.map(({ hanger }) => hanger)),
            message: `These hangers would have to push, and hang slack instead: ${joined(slack.map(({ hanger, stage, states }) =>
                `${hanger}${stage === null ? '' : ` in stage ${stage}`} by ${kilonewtons(-Math.min(...states.map(({ N }) => N)))}`))}; the forces found with them do not hold`,
            action: 'Tighten them more, move them to where the old timber sags, or leave them out.',
            decider: 'structural engineer',
            source: first.usedAt ?? first.source
        }];
    }
};
