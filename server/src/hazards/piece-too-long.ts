import { accessProblems } from '../pieces/access.js';
import type { HazardRule } from './hazard-rule.js';
import { joined, metres } from './telling.js';

/** What does not pass is forced or cut where it stands. The limit is the file's own. */
export const pieceTooLong: HazardRule = {
    code: 'piece-too-long',
    find: ({ model }) => {
        const long = accessProblems(model).filter(({ limit }) => limit === 'piece');
        return long.length === 0 ? [] : [{
            severity: model.stages.length > 0 ? 'warn' : 'note',
            subject: joined(long.map(({ piece }) => piece.member)),
            message: `The access lets ${metres(long[0]!.most)} pass, and these are longer: ${joined(long.map(({ piece, value }) => `${piece.mark} ${metres(value)}`))}`,
            action: 'Break it into leaves or splice it, or open another way in; what stands there already belongs into the first stage.',
            decider: 'you',
            source: long[0]!.piece.source
        }];
    }
};
