import type { Stage } from '../../../language/src/model.js';
import type { CheckResult } from '../results.js';
import type { HazardContext } from './hazard-rule.js';

export interface FailingStage {
    readonly stage: Stage;
    readonly last: boolean;
    /** The stage that is made next; the same where it is the last. */
    readonly next: string;
    readonly failing: readonly CheckResult[];
    /** Those of them that something may break by. */
    readonly strength: readonly CheckResult[];
}

const comfort = new Set(['instant', 'final', 'vibration']);

export function failingStages({ model: { stages }, checks }: HazardContext): readonly FailingStage[] {
    return stages.map((stage, i) => {
        const failing = checks.filter(check => check.stage === stage.name && !check.pass);
        const strength = failing.filter(({ check }) => !comfort.has(check));
        return { stage, last: i === stages.length - 1, next: (stages[i + 1] ?? stage).name, failing, strength };
    }).filter(({ failing }) => failing.length > 0);
}
