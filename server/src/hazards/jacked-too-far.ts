import type { Member } from '../../../language/src/model.js';
import type { HazardRule } from './hazard-rule.js';
import { propSteps } from './prop-footing-unknown.js';
import { metres, millimetres } from './telling.js';

/** Part of the span that plaster and joints are taken to bear. Common practice, no source. */
const borne = 1 / 500;

/** An old timber has set; what hangs on it cracks when it is pushed back. Common practice, no source. */
export const jackedTooFar: HazardRule = {
    code: 'jacked-too-far',
    find: ({ model }) => propSteps(model).flatMap(({ member: name, at, lift, source }) => {
        const member = model.members.find(one => one.name === name);
        const span = member && spanAround(member, at.value);
        return span === undefined || lift.value <= span * borne ? [] : [{
            severity: 'warn' as const,
            subject: name,
            message: `The prop of ${name} at ${metres(at.value)} lifts ${millimetres(lift.value)}, more than 1/500 of the span of ${metres(span)}: finishes and joints may crack`,
            action: 'Lift a millimetre or two a day, watch plaster, joints and doors, and stop at the first crack or creak; an old sag need not go.',
            decider: 'you, with the conservation officer where the finish is of worth',
            source: lift.source ?? source
        }];
    })
};

function spanAround({ supports, length }: Member, at: number): number {
    const places = supports.map(support => support.at.value);
    const [left, right] = [Math.max(...places.filter(x => x < at)), Math.min(...places.filter(x => x > at))];
    return Number.isFinite(right - left) ? right - left : length.value;
}
