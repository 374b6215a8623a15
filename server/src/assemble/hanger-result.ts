import type { Hanger, Model, PlatePart } from '../../../language/src/model.js';
import type { HangerContext } from '../checks/check.js';
import type { CheckResult, HangerResult } from '../results.js';
import { kN, tidy } from './amounts.js';
import { worstCheck } from './member-result.js';

/** A hanger's results in one stage. */
export function hangerResult({ hanger, actions }: HangerContext, checks: readonly CheckResult[], model: Model): HangerResult {
    const { min, max } = actions.range;
    return {
        name: hanger.name,
        stage: actions.stage,
        carries: hanger.carries,
        carriesAt: hanger.carriesAt.value,
        from: hanger.from,
        fromAt: hanger.fromAt.value,
        force: { min: kN(Math.max(0, min)), max: kN(Math.max(0, max)) },
        tightening: tighteningIn(model, hanger.name, actions.stage),
        description: describe(hanger),
        worst: worstCheck(checks),
        source: hanger.source,
        usedAt: hanger.usedAt
    };
}

function tighteningIn(model: Model, hanger: string, stage: string | null): HangerResult['tightening'] {
    const steps = model.stages.find(({ name }) => name === stage)?.steps ?? [];
    const force = steps.flatMap(step => (step.kind === 'tighten' && step.hangers.includes(hanger) ? [step.force.value] : [])).at(-1);
    return force === undefined ? undefined : kN(force);
}

function describe({ rods, headPlate, footPlate }: Hanger): string {
    const plates = [plate('head plate', headPlate), plate('foot plate', footPlate)].filter(text => text !== '');
    return [`${rods.count} ${rods.count === 1 ? 'rod' : 'rods'} ${rods.size} ${rods.grade.value}`, ...plates].join(', ');
}

function plate(what: string, part: PlatePart | undefined): string {
    return part ? `${what} ${tidy(part.width.value)} × ${tidy(part.thickness.value)} × ${tidy(part.length.value)} mm` : '';
}
