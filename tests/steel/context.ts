/** A steel beam for the checks to look at. */
import type { Member } from '../../language/src/model.js';
import type { ActionState, MemberActions } from '../../server/src/analysis/actions.js';
import type { SteelMemberContext } from '../../server/src/checks/check.js';
import { beam, given, source, type Beam } from '../checks/fixture.js';
import { memberOf } from './answers.js';

interface SteelBeam extends Pick<Beam, 'length' | 'states'> {
    readonly name: string;
    readonly grade?: string;
    readonly member?: Partial<Member>;
    readonly actions?: Partial<MemberActions>;
    readonly context?: Partial<SteelMemberContext>;
}

export function steelBeam({ name, grade = 'S235', length, states, member, actions, context }: SteelBeam): SteelMemberContext {
    const steel = memberOf(name, grade);
    const section = { shape: 'rolled', designation: name, given: given(name), source } as const;
    const { strength: _, ...rest } = beam({ b: steel.section.b, h: steel.section.h, length, states, member: { section, ...member }, actions });
    return { ...rest, steel, ...context };
}

/** Stations of a simple beam under an even load q (N/mm), one combination, every tenth of the span. */
export function evenly(q: number, length: number, state: (forces: Partial<ActionState>) => ActionState): readonly (readonly [number, ActionState])[] {
    return Array.from({ length: 11 }, (_, i) => {
        const x = length * i / 10;
        return [x, state({ M: q * x * (length - x) / 2, V: q * (length / 2 - x) })];
    });
}
