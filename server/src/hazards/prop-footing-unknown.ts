import type { Model, StageStep } from '../../../language/src/model.js';
import type { PropActions } from '../analysis/actions.js';
import type { HazardRule } from './hazard-rule.js';
import { joined, kilonewtons, metres } from './telling.js';

export type Prop = Extract<StageStep, { kind: 'prop' }>;

export function propSteps({ stages }: Model): readonly Prop[] {
    return stages.flatMap(({ steps }) => steps.flatMap(step => (step.kind === 'prop' ? [step] : [])));
}

/** What a prop stands on is never in the file, so it is said whenever there is one. Common practice, no source. */
export const propFootingUnknown: HazardRule = {
    code: 'prop-footing-unknown',
    find: ({ model, actions }) => {
        const props = propSteps(model);
        return props.length === 0 ? [] : [{
            severity: 'warn',
            subject: joined(props.map(({ member }) => member)),
            message: `Nothing is known of what the props stand on: ${joined(props.map(prop => pushOf(prop, actions.props ?? [])))}`,
            action: 'Follow each prop down to firm ground, floor by floor, and spread its load on a sole plate across the joists; no prop on boards alone.',
            decider: 'structural engineer',
            source: props[0]!.source
        }];
    }
};

/** The greatest push of the ultimate combinations, over all stages in which it stands. */
function pushOf({ member, at }: Prop, all: readonly PropActions[]): string {
    const pushes = all.filter(one => one.member === member && Math.abs(one.at - at.value) < 1e-6).flatMap(({ states }) => states.map(({ R }) => R));
    return `${member} at ${metres(at.value)} pushes down with ${pushes.length > 0 ? kilonewtons(Math.max(0, ...pushes)) : 'a force that was not computed'}`;
}
