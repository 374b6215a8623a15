import { broughtIn } from '../pieces/brought-in.js';
import { massForOne, peopleToCarry } from '../pieces/people.js';
import { piecesOf } from '../pieces/pieces.js';
import type { HazardRule } from './hazard-rule.js';
import { joined } from './telling.js';

/** Two people, where the file does not say what is carried. */
const usual = 2 * massForOne;

/** The limit is the file's own, or two people's; one person's 25 kg is m_ref of ISO 11228-1, from memory. */
export const pieceTooHeavy: HazardRule = {
    code: 'piece-too-heavy',
    find: ({ model }) => {
        const most = model.access?.carry?.value ?? usual;
        const carried = broughtIn(model);
        const heavy = piecesOf(model).flatMap(({ member, mark, mass, source }) => (mass !== undefined && mass > most && carried.has(member) ? [{ member, mark, mass, source }] : []));
        const isKnown = model.stages.length > 0;
        return heavy.length === 0 || (!isKnown && !model.access?.carry) ? [] : [{
            severity: isKnown ? 'warn' : 'note',
            subject: joined(heavy.map(({ member }) => member)),
            message: `Heavier than the ${most} kg that are carried${model.access?.carry ? '' : ' by two'}: ${joined(heavy.map(({ mark, mass }) => `${mark} ${Math.ceil(mass)} kg, ${peopleToCarry(mass)} people at ${massForOne} kg`))}`,
            action: 'Take a hoist or more hands, or break it into leaves; what stands there already belongs into the first stage.',
            decider: 'you',
            source: heavy[0]!.source
        }];
    }
};
