import type { Face } from '../../../language/src/model.js';
import type { HazardRule } from './hazard-rule.js';
import { propSteps } from './prop-footing-unknown.js';
import { joined, metres, millimetres } from './telling.js';

/** A prop presses on the bottom: where that is lost it bears on nothing that was checked. Common practice, no source. */
export const propUnderLoss: HazardRule = {
    code: 'prop-under-loss',
    find: ({ model }) => propSteps(model).flatMap(({ member: name, at, source }) => {
        const losses = (model.members.find(member => member.name === name)?.losses ?? []).filter(({ from, to }) => from.value <= at.value && at.value <= to.value);
        const faces = losses.flatMap(loss => Object.entries(loss.faces) as [Face, { readonly value: number }][]).filter(([, { value }]) => value > 0);
        return faces.length === 0 ? [] : [{
            severity: faces.some(([face]) => face === 'bottom') ? 'stop' as const : 'warn' as const,
            subject: name,
            message: `The prop of ${name} at ${metres(at.value)} stands where timber is lost (${joined(faces.map(([face, { value }]) => `${face} ${millimetres(value)}`))})`,
            action: 'Move it to sound timber; where that cannot be, pack what is left flat and have the bearing judged.',
            decider: 'structural engineer',
            source
        }];
    })
};
