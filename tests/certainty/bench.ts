/** How fast break-evens of the sail loft are; asserts nothing. `npx vite-node tests/certainty/bench.ts`. */
import { breakEvens, worstFunction } from '../../server/src/certainty/index.js';
import type { Model } from '../../language/src/model.js';
import { compute, sailLoft } from './jobs.js';

const model = sailLoft();
const paths = [
    'T2.loss.top', 'T2.loss.left', 'storage', 'ceiling', 'joists', 'person', 'valley', 'oldPine.grade', 'oldPine.fm_k', 'oldPine.E0_mean',
    'newLarch.grade', 'oldBrick.fk', 'T2.north.bearing', 'T2.south.bearing', 'R1.north.bearing', 'R1.south.bearing',
    'T2.section.depth', 'R1.plies.depth', 'R1.bolts.every', 'R1.bolts.grade'
];

const median = (values: readonly number[]): number => [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)]!;
const cpu = (): number => { const { user, system } = process.cpuUsage(); return (user + system) / 1000; };

function run(say: boolean): { readonly wall: number; readonly cpu: number; readonly evaluations: number } {
    let evaluations = 0;
    const counted = (one: Model) => { evaluations += 1; return compute(one); };
    const [wall, used] = [performance.now(), cpu()];
    const work = breakEvens(model, paths, { worst: worstFunction(model, counted) });
    let step = work.next();
    while (!step.done) step = work.next();
    if (say) for (const { path, sentence } of step.value) console.log(`  ${path}: ${sentence}`);
    return { wall: performance.now() - wall, cpu: cpu() - used, evaluations };
}

run(true);
const runs = Array.from({ length: 5 }, () => run(false));
const single = median(Array.from({ length: 20 }, () => { const begun = cpu(); compute(model); return cpu() - begun; }));
const [wall, used, evaluations] = [median(runs.map((one) => one.wall)), median(runs.map((one) => one.cpu)), runs[0]!.evaluations];
console.log(`${paths.length} break-evens of the sail loft: ${wall.toFixed(0)} ms, ${used.toFixed(0)} ms of a processor, ${(wall / 1000).toFixed(2)} of the 1000 ms aimed at`);
console.log(`  ${evaluations} evaluations, ${(used / evaluations).toFixed(1)} ms each; ${(used / single).toFixed(0)} times the whole job once (${single.toFixed(1)} ms)`);
