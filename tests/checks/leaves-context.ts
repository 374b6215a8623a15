/** Two leaves of 60 × 200 mm, the second broken at 2.00 m, with bolts as a test says. Units N, mm. */
import type { PliesSection } from '../../language/src/model.js';
import type { BoltActions, LeafActions } from '../../server/src/analysis/actions.js';
import type { MemberContext } from '../../server/src/checks/check.js';
import { beam, combination, given, segment, source, state, type Beam } from './fixture.js';

export interface Bolt { readonly x: number; readonly height?: number; readonly along: number; readonly across: number }

export const diagrams = { N: [], V: [], M: [], instant: [], final: [] };

export function leaves(bolts: readonly Bolt[], more: Partial<Beam> & { readonly size?: string; readonly shear?: number } = {}): MemberContext {
    const { size = 'M12', shear = 1000, ...rest } = more;
    const section: PliesSection = {
        shape: 'plies', count: 2, breadth: given(60), depth: given(200), source,
        butts: [{ leaf: 2, at: given(2000), source }],
        bolts: [{ size, diameter: Number(size.slice(1)), grade: given('8.8'), places: bolts.map(({ x, height = 0 }) => ({ x, height, source })), source }]
    };
    const piece = (leaf: number, ...pieces: LeafActions['pieces']): LeafActions =>
        ({ leaf, pieces, diagrams, moment: { min: 0, max: 0 }, shear: { min: 0, max: 0 } });
    const boltActions = bolts.map(({ x, height = 0, along, across }, place): BoltActions =>
        ({ row: 0, place, x, height, plane: 1, states: [{ combination: combination(), along, across }] }));
    const segments = [1, 2].map(leaf => segment(0, 4000, 60, 200, { leaf }));
    const context = beam({ b: 60, h: 200, length: 4000, member: { section }, ...rest });
    const stations = [1, 2].flatMap(leaf => [0, 1000, 1900, 2000, 2100, 3000, 4000].map(x =>
        ({ x, leaf, segment: leaf - 1, states: [state({ M: 2e6, V: x === 2000 ? 0 : x < 2000 ? shear : -shear })] })));
    return {
        ...context,
        actions: {
            ...context.actions, segments, stations, bolts: boltActions,
            leaves: [piece(1, { from: 0, to: 4000 }), piece(2, { from: 0, to: 2000 }, { from: 2000, to: 4000 })]
        }
    };
}
