import type { HangerContext } from '../check.js';
import { rodTension } from '../en1993/rods/rod-tension.js';
import { isProblem } from '../verdict.js';
import { hangerCheck } from './seats.js';
import { tighteningOf } from './tightening.js';

/** Each rod's thread in tension; what drying takes of the tightening is told after it. */
export const rods = hangerCheck('rods', 'EN 1993-1-8 Table 3.4', (context: HangerContext, { rod, greatestShare }) => {
    const loss = tighteningOf(context);
    return {
        each: force => {
            const said = rodTension({ rod, rods: context.hanger.rods.count, force, greatestShare, gammaM2: context.parameters.steel.gammaM2 });
            return [isProblem(said) || !loss || isProblem(loss) ? said : { ...said, explain: () => [...loss.explain(), ...said.explain()] }];
        },
        lacking: [
            ...loss && isProblem(loss) ? [`how much of the tightening drying takes: ${loss.problem}`] : [],
            ...context.actions.slack ? ['in some combination the hanger would push: it hangs slack then, which the analysis does not follow'] : []
        ]
    };
});
