/** Jobs as large as are met, for measuring how cost grows. */
import type { Member } from '../../language/src/model.js';
import { elastic, member, type LoadSketch } from './fixture.js';
import type { HangerSketch, Retrofit } from './retrofit.js';

/**
 * A floor in one group: `pairs` old joists, each hung by four hangers from a new one beside it, all old ones on one trimmer.
 * 100 pairs are 200 members (and the trimmer) and 400 hangers.
 */
export function hungFloor(pairs: number): Retrofit {
    const members: Member[] = [];
    const hangers: HangerSketch[] = [];
    const loads: LoadSketch[] = [];
    const width = pairs * 400;
    // The trimmer stands on a wall every fifth joist.
    const walls = Array.from({ length: Math.ceil(pairs / 5) + 1 }, (_, i) => ({ at: Math.min(i * 2000, width) }));
    members.push(member({ name: 'trimmer', length: width, b: 120, h: 240, supports: walls.filter(({ at }, i) => i === 0 || at > walls[i - 1]!.at), selfWeight: true }));
    for (let i = 0; i < pairs; i++) {
        const [old, fresh] = [`old ${i}`, `new ${i}`];
        members.push(
            member({ name: old, length: 4000, supports: [{ at: 50 }, { at: 4000, kind: 'member', on: 'trimmer', onCarrierAt: 200 + 400 * i }], selfWeight: true }),
            member({ name: fresh, length: 4000, supports: [{ at: 50 }, { at: 3950 }], selfWeight: true })
        );
        for (const at of [800, 1600, 2400, 3200]) hangers.push({ name: `hanger ${i} ${at}`, carries: old, at, from: fresh, fromAt: at, k: 8000 });
        loads.push({ name: `floor ${i}`, on: old, q: 0.3 }, { name: `use ${i}`, on: old, q: 0.8, action: { kind: 'imposed', category: 'A' } });
    }
    return { members, hangers, loads, properties: () => elastic(11000, { kdef: 0.8 }) };
}

/** Three leaves with their butts staggered, and this many bolts. */
export function boltedBeam(bolts: number): Retrofit {
    const places = Array.from({ length: bolts }, (_, i): [number, number] => [100 + 4500 * i / (bolts - 1), [50, 0, -50, 0][i % 4]!]);
    const plies = { count: 3, butts: [[1, 1850], [3, 1850], [2, 2950]] as const, bolts: places };
    return {
        members: [member({ name: 'R1', length: 4700, b: 63, h: 200, supports: [{ at: 0 }, { at: 4700 }], plies, selfWeight: true })],
        loads: [
            { name: 'dead', on: 'R1', q: 1.1 }, { name: 'storage', on: 'R1', q: 1.6, action: { kind: 'imposed', category: 'E' } },
            { name: 'valley', on: 'R1', F: 3200, at: 2200, action: { kind: 'snow' } }
        ],
        properties: () => elastic(11000, { kdef: 0.8, slip: () => 4490 })
    };
}
