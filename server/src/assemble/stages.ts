/** The order of work: what stands in each stage, and how it is told. */
import type { Hanger, Model, Stage, StageStep } from '../../../language/src/model.js';
import type { PropSketch, StageResult } from '../results.js';

/** Hangers that are there in a stage: from where they are added, or from the first where none adds them, until they are removed. */
export function hangersAt(model: Model, stage: string | null): readonly Hanger[] {
    const until = stagesUntil(model, stage);
    return model.hangers.filter(({ name }) => {
        const changes = until.flatMap(({ steps }) => steps.flatMap(step => (isChange(step) && step.elements.includes(name) ? [step.kind] : [])));
        const addedLater = model.stages.some(({ steps }) => steps.some(step => step.kind === 'add' && step.elements.includes(name)));
        return changes.length > 0 ? changes.at(-1) === 'add' : !addedLater;
    });
}

/** Props under a member at the end of a stage. */
export function propsAt(model: Model, member: string, stage: string | null): readonly PropSketch[] {
    return stagesUntil(model, stage).flatMap(({ steps }) => steps).reduce<readonly PropSketch[]>((standing, step) => {
        switch (step.kind) {
            case 'prop': return step.member === member ? [...standing, { at: step.at.value, lift: step.lift.value, source: step.source }] : standing;
            case 'release': return step.members === 'all' || step.members.includes(member) ? [] : standing;
            default: return standing;
        }
    }, []);
}

export function stageResults(model: Model): StageResult[] {
    return model.stages.map(({ name, title, steps, source }) => ({ name, title, lines: steps.map(inWords), source }));
}

function stagesUntil({ stages }: Model, stage: string | null): readonly Stage[] {
    return stages.slice(0, stages.findIndex(({ name }) => name === stage) + 1);
}

function isChange(step: StageStep): step is Extract<StageStep, { kind: 'add' | 'remove' }> {
    return step.kind === 'add' || step.kind === 'remove';
}

function inWords(step: StageStep): string {
    switch (step.kind) {
        case 'add': return `have ${step.elements.join(', ')} in place`;
        case 'remove': return `take out ${step.elements.join(', ')}`;
        case 'prop': return `prop ${step.member} at ${(step.at.value / 1000).toFixed(2)} m${step.lift.value > 0 ? ` and lift it ${tidy(step.lift.value)} mm` : ', snug'}`;
        case 'tighten': return `tighten ${step.hangers.join(', ')} to ${tidy(step.force.value / 1000)} kN each`;
        case 'release': return step.members === 'all' ? 'release all props' : `release the props of ${step.members.join(', ')}`;
    }
}

const tidy = (value: number): string => String(Number(value.toPrecision(3)));
