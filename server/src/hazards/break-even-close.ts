import type { LateHazardRule } from './hazard-rule.js';
import { millimetres } from './telling.js';

/** mm, and part of the depth: what an awl may miss. Common practice, no source. */
const missed = { atLeast: 10, part: 0.2 };

/** Probing finds a depth to so much and no better; where a check fails within that, it is not known to hold. */
export const breakEvenClose: LateHazardRule = {
    code: 'break-even-close',
    needs: 'breakEvens',
    find: ({ model, breakEvens = [] }) => model.members.flatMap(member => member.losses.flatMap(loss => Object.values(loss.faces).flatMap(depth => {
        const known = breakEvens.find(({ path, passes }) => path === depth.path && passes);
        const given = typeof known?.given === 'number' ? known.given : depth.value;
        const margin = typeof known?.limit === 'number' ? known.limit - given : Infinity;
        return known === undefined || margin < 0 || margin > Math.max(missed.atLeast, missed.part * given) ? [] : [{
            severity: 'warn' as const,
            subject: member.name,
            message: `${millimetres(margin)} more of loss than given and ${member.name} no longer holds: ${known.sentence}`,
            action: 'Probe again at closer centres with a drill, from every face, before anything rests on that depth.',
            decider: 'structural engineer',
            source: depth.source
        }];
    })))
};
