import type { SupportActions } from '../analysis/actions.js';
import type { HazardRule } from './hazard-rule.js';
import { kilonewtons } from './telling.js';

/** The analysis lets every support hold down; one that cannot would let the member lift (EN 1990 6.4.2, EQU, table A1.2(A)). */
export const upliftNotTied: HazardRule = {
    code: 'uplift-not-tied',
    find: ({ model, actions }) => model.members.flatMap(({ name }) => {
        const lifting = actions.members.filter(({ member }) => member === name)
            .flatMap(({ supports, stage }) => supports.filter(lifts).map(support => ({ support, stage })));
        const places = [...new Set(lifting.map(({ support }) => support.at))];
        return places.map(at => {
            const { support, stage } = lifting.filter(one => one.support.at === at)
                .reduce((a, b) => b.support.equilibriumMin < a.support.equilibriumMin ? b : a);
            return {
                severity: 'stop' as const,
                subject: name,
                message: `${name} lifts off ${support.support}${stage === null ? '' : ` in stage ${stage}`} by ${kilonewtons(-support.equilibriumMin)} and nothing holds it down there`,
                action: 'Tie it down for that force and write tied, or move the support.',
                decider: 'structural engineer',
                source: support.source
            };
        });
    })
};

/** By more than a newton, which is rounding. */
function lifts({ equilibriumMin, tied, kind }: SupportActions): boolean {
    return equilibriumMin < -1 && !tied && (kind === 'wall' || kind === 'member');
}
