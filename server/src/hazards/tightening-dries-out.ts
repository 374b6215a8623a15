import type { CheckResult } from '../results.js';
import type { HazardRule } from './hazard-rule.js';
import { joined } from './telling.js';

/** Part of the tightening of which the loss is told as a warning. Common practice, no source. */
const much = 0.5;

/** Timber shrinks under the plates and the rods go slack: EN 1995-1-1 10.4.3(3) asks to tighten bolts again. */
export const tighteningDriesOut: HazardRule = {
    code: 'tightening-dries-out',
    find: ({ model, checks }) => {
        const tightened = new Set(model.stages.flatMap(({ steps }) => steps.flatMap(step => (step.kind === 'tighten' ? step.hangers : []))));
        const last = new Map(checks.flatMap(check => (check.check === 'rods' ? [[check.subject, check]] : [])));
        const losses = model.hangers.filter(({ name }) => tightened.has(name)).flatMap(hanger => {
            const share = lostShare(last.get(hanger.name));
            return share > 0 ? [{ hanger, share }] : [];
        });
        const [first] = losses;
        return first === undefined ? [] : [{
            severity: losses.some(({ share }) => share >= much) ? 'warn' : 'note',
            subject: joined(losses.map(({ hanger }) => hanger.name)),
            message: `Drying takes of the tightening: ${joined(losses.map(({ hanger, share }) => `${hanger.name} ${Math.ceil(100 * share)} %`))}`,
            action: 'Leave the nuts in reach; tighten again after the first heating season and a year later, by the force and not by feel.',
            decider: 'you',
            source: first.hanger.usedAt ?? first.hanger.source
        }];
    }
};

/** As the check of the rods tells it, before their strength: T is what was set, ΔT what goes. */
function lostShare(check: CheckResult | undefined): number {
    const told = check?.steps.find(({ symbol }) => symbol === '\\Delta T');
    const set = told?.terms.find(({ symbol }) => symbol === 'T')?.amount;
    return told && set ? told.result.value * newtonsIn(told.result.unit) / (set.value * newtonsIn(set.unit)) : 0;
}

const newtonsIn = (unit: string): number => (unit === 'kN' ? 1000 : 1);
