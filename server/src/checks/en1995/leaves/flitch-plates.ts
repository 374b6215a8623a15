/** The plates of a flitch beam in bending, elastically, less the holes of their bolts. */
import type { FlitchSection } from '../../../../../language/src/model.js';
import type { MemberContext } from '../../check.js';
import { judgedCheck, whereAt, type Answer } from '../../judged.js';
import { kNm, step } from '../../steps.js';
import { against, isProblem } from '../../verdict.js';
import { normalHole } from '../../../analysis/splice-layout.js';
import { plateMoment, plateSteel, stiffestShares } from './flitch-shares.js';

const clause = 'EN 1993-1-1 6.2.5';

export const flitchPlates = judgedCheck('plates', clause, (context: MemberContext) => {
    const { section } = context.member;
    if (section.shape !== 'flitch') {
        return { answers: [] };
    }
    const [shares, steel] = [stiffestShares(context, section), plateSteel(context, section)];
    if (isProblem(shares) || 'problem' in steel) {
        return { answers: [], lacking: [isProblem(shares) ? shares.problem : (steel as { readonly problem: string }).problem] };
    }
    const W = netModulus(section);
    const { gammaM0 } = context.parameters.steel;
    const capacity = W * steel.fy / gammaM0;
    const answers = context.actions.stations.flatMap(station => station.states.map((state): Answer => {
        const all = plateMoment(context, section, shares.steel, station.x, state.combination);
        const M = Math.abs(all) / section.plates;
        return {
            said: against(M, capacity, kNm, clause, () => [
                step('M_{Ed}', '\\frac{M_s}{n}', [['M_s', Math.abs(all) / 1e6, 'kNm', 'of all plates'], ['n', section.plates, '', 'plates']], kNm(M),
                    { note: `${(100 * shares.steel).toFixed(1)} % of the beam's moment at the bolts by transformed stiffness, the timber after creep and at its 5 % value; straight between bolts` }),
                step('M_{el,Rd}', '\\frac{W_{net} f_y}{\\gamma_{M0}}', [['W_{net}', W, 'mm3', 'one plate less its holes'], ['f_y', steel.fy, 'MPa', steel.name], ['\\gamma_{M0}', gammaM0, '']],
                    kNm(capacity), { clause: `${clause}(2)` })
            ]),
            where: whereAt(station, state)
        };
    }));
    return { answers };
});

/** Of one plate at the station with the most hole: I less d0³/12 + d0 z² of each, mm³. */
function netModulus({ thickness, plateDepth, bolts }: FlitchSection): number {
    const holes = new Map<number, number>();
    for (const { diameter, places } of bolts) {
        const d0 = normalHole(diameter);
        for (const { x, height } of places) {
            holes.set(x, (holes.get(x) ?? 0) + d0 ** 3 / 12 + d0 * height ** 2);
        }
    }
    const h = plateDepth.value;
    return 2 / h * thickness.value * (h ** 3 / 12 - Math.max(0, ...holes.values()));
}
