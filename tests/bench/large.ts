import { evaluateText } from '../../language/src/index.js';
import { compute } from '../../server/src/compute.js';
import { median, report } from './measure.js';

const sizes = [25, 50, 100, 200];

/** Members side by side, each hung twice from the next: one connected group. */
export function floor(members: number): string {
    const lines = ['job "Malt floor" { service class 1 }', 'masonry brick { fk 4 MPa }', 'wall north { of brick thick 330 mm }', 'wall south { of brick thick 330 mm }'];
    for (let i = 0; i < members; i++) {
        lines.push(`member M${i} { of C24 section 200 x 240 mm length 4.00 m on north at 0.10 m bearing 150 mm on south at 3.90 m bearing 150 mm restrained }`);
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
        const evaluation = evaluateText(floor(members), 'floor.padstone');
        const runs = [0, 1, 2].map(() => {
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
