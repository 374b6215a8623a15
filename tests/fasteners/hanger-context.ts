/** A hanger between an old beam of 190 × 240 mm and a new one of 100 × 200 mm above it. */
import type { Hanger, Timber } from '../../language/src/model.js';
import { createParameters } from '../../server/src/catalog/parameters.js';
import type { HangerContext, MemberContext } from '../../server/src/checks/check.js';
import { beam, combination, given, segment, source, strengthOf, support } from '../checks/fixture.js';

const timber = (name: string, moisture?: number): Timber =>
    ({ kind: 'timber', name, properties: {}, ...moisture === undefined ? {} : { moisture: given(moisture) }, source });

const plate = (width: number, thickness: number, length: number, steel = 'S275') =>
    ({ width: given(width), thickness: given(thickness), length: given(length), steel, source });

export function hanger(changes: Partial<Hanger> = {}): Hanger {
    return {
        name: 'H1', carries: 'T2', carriesAt: given(1500), from: 'R1', fromAt: given(1500),
        rods: { count: 2, size: 'M12', diameter: 12, grade: given('4.6') },
        headPlate: plate(70, 10, 300), footPlate: plate(70, 10, 300),
        washers: { size: given(40), thickness: given(6) }, gap: given(0), source, ...changes
    };
}

interface Changes {
    readonly hanger?: Partial<Hanger>;
    readonly context?: Partial<HangerContext>;
    /** Sound breadth of the old beam at the hanger, and how far its middle moved. */
    readonly old?: { readonly b: number; readonly shiftRight: number };
    readonly moisture?: number;
    readonly N?: number;
}

export function hangerContext({ hanger: changes, context, old, moisture, N = 10_000 }: Changes = {}): HangerContext {
    const one = hanger(changes);
    const member = (name: string, b: number, h: number, grade: string, residual?: Changes['old']): MemberContext => beam({
        b, h, length: 4900, strength: strengthOf(grade), member: { name, material: name },
        actions: {
            member: name, supports: [support('north', 100, 150, [5000]), support('south', 4800, 150, [5000])],
            ...residual && { segments: [segment(0, 4900, residual.b, h, { weakened: true, shiftRight: residual.shiftRight })] }
        },
        context: { hangers: [one] }
    });
    return {
        hanger: one,
        actions: { hanger: 'H1', stage: null, states: [{ combination: combination('medium-term'), N }], range: { min: N, max: N }, slack: false },
        carried: member('T2', 190, 240, 'C18', old), carrier: member('R1', 100, 200, 'C24'),
        job: beam({ b: 1, h: 1, length: 1 }).job,
        parameters: createParameters([]).parameters, materials: [timber('T2', moisture), timber('R1', 0.14)], ...context
    };
}
