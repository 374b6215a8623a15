import { evaluateText } from '../../language/src/index.js';
import { compute } from '../../server/src/compute.js';
import { median, report } from './measure.js';

const sizes = [25, 50, 100, 200];

/** Members side by side, each hung twice from the next: one connected group, of another timber size in each run. */
export function floor(members: number, run = 0): string {
    const lines = ['job "Malt floor" { service class 1 }', 'masonry brick { fk 4 MPa }', 'wall north { of brick thick 330 mm }', 'wall south { of brick thick 330 mm }'];
    for (let i = 0; i < members; i++) {
        lines.push(`member M${i} { of C24 section ${200 + run} x 240 mm length 4.00 m on north at 0.10 m bearing 150 mm on south at 3.90 m bearing 150 mm restrained }`);
        lines.push(`load q${i} imposed B 1.0 kN/m on M${i}`);
        for (const at of i > 0 ? ['1.30 m', '2.70 m'] : []) {
            lines.push(`hanger H${i}${at[0]} carries M${i} at ${at} from M${i - 1} at ${at} { rods 2 M12 grade 4.6 head plate 70 x 10 x 300 mm steel S275 foot plate 70 x 10 x 300 mm steel S275 washers 40 x 6 mm }`);
        }
    }
    return lines.join('\n');
}

/** Prints how the time of a group grows with its members; the exponent is the slope of its logarithm. */
export function largeFloors(): void {
    const times = sizes.map(members => {
        const runs = [0, 1, 2].map(run => {
            const evaluation = evaluateText(floor(members, run), 'floor.padstone');
            const start = performance.now();
            compute(evaluation);
            return performance.now() - start;
        });
        report(`group of ${members} members and ${2 * (members - 1)} hangers, analysed and checked`, runs, 'ms', members === 200 ? 1000 : undefined);
        return median(runs);
    });
    const exponent = Math.log(times.at(-1)! / times[0]!) / Math.log(sizes.at(-1)! / sizes[0]!);
    console.log(`  time grows with the number of members to the power ${exponent.toFixed(2)}`);
}

/** Three leaves with butts on 42 bolts. */
export function boltedLeaves(): void {
    const runs = Array.from({ length: 40 }, (_, run) => {
        const evaluation = evaluateText([
            'job "Malt floor" { service class 1 }', 'masonry brick { fk 4 MPa }', 'wall north { of brick thick 330 mm }', 'wall south { of brick thick 330 mm }',
            `member R1 { of C24 plies 3 of 63 x ${200 + run} mm length 4.90 m on north at 0.10 m bearing 150 mm on south at 4.80 m bearing 150 mm ply 1, 3 butt at 1.90 m ply 2 butt at 3.00 m bolts M12 grade 8.8 every 118 mm zigzag 50 mm restrained }`,
            'load floor imposed A 1 kN/m on R1', 'load boards permanent 1 kN/m on R1'
        ].join('\n'), 'beam.padstone');
        const start = performance.now();
        compute(evaluation);
        return performance.now() - start;
    });
    report('beam of three leaves on 42 bolts, another in each run', runs.slice(20), 'ms', 10);
}
