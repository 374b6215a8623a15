import type { HazardRule } from './hazard-rule.js';
import { propSteps } from './prop-footing-unknown.js';
import { joined, kilonewtons, metres } from './telling.js';

/** A prop cannot pull: where the analysis lets it, it would be loose and may fall. Statics. */
export const propLiftsOff: HazardRule = {
    code: 'prop-lifts-off',
    find: ({ model, actions }) => {
        const loose = (actions.props ?? []).filter(({ slack }) => slack);
        const step = propSteps(model).find(({ member, at }) => member === loose[0]?.member && Math.abs(at.value - loose[0].at) < 1e-6);
        return step === undefined ? [] : [{
            severity: 'stop',
            subject: joined(loose.map(({ member }) => member)),
            message: `The timber lifts off these props: ${joined(loose.map(({ member, at, stage, states }) =>
                `${member} at ${metres(at)} in stage ${stage} by ${kilonewtons(-Math.min(...states.map(({ R }) => R)))}`))}; the forces found with them do not hold`,
            action: 'Wedge or lift it more, move it, or release it before that stage; fix a prop that stays so that it cannot fall.',
            decider: 'structural engineer',
            source: step.source
        }];
    }
};
