/** The lists of classes that a grade goes up and down in. */
import { boltGrades } from '../catalog/bolts.js';
import { steelGrades } from '../catalog/steel.js';
import { timberClassNames } from '../catalog/timber.js';
import { passes, tried, type Asking, type Tried } from './asking.js';

/** EN 338 softwoods and hardwoods, EN 14080 homogeneous and combined, EN 1993-1-1 Table 3.1, EN 1993-1-8 Table 3.1; each from the lowest. */
const lists: readonly (readonly string[])[] = [
    ...[/^C\d+$/, /^D\d+$/, /^GL\d+h$/, /^GL\d+c$/].map((pattern) => timberClassNames.filter((name) => pattern.test(name))),
    steelGrades, [...boltGrades.keys()]
].map((names) => [...names].sort((a, b) => strengthIn(a) - strengthIn(b)));

/** The number in a class's name is its strength: f_m,k in MPa, f_y in MPa, f_ub in 100 MPa. */
export function strengthIn(grade: string): number {
    return Number(/[\d.]+/.exec(grade)?.[0] ?? NaN);
}

export const isGrade = (name: string): boolean => lists.some((list) => list.includes(name));

export function gradesBelow(grade: string): readonly string[] {
    const list = lists.find((one) => one.includes(grade)) ?? [];
    return list.slice(0, Math.max(0, list.indexOf(grade))).reverse();
}

export function gradesAbove(grade: string): readonly string[] {
    const list = lists.find((one) => one.includes(grade)) ?? [];
    return list.slice(list.indexOf(grade) + 1);
}

export interface FoundGrade {
    readonly given: Tried<string>;
    /** The first class with the other verdict, and the last one before it. */
    readonly turn?: { readonly passing: Tried<string>; readonly failing: Tried<string> };
    readonly last: Tried<string>;
    /** So many classes were tried. */
    readonly values: number;
}

/** Down the list while it passes; up where it fails already. */
export function* searchGrades(grade: string): Asking<string, FoundGrade> {
    const given = yield* tried(grade);
    let last = given;
    let values = 1;
    for (const name of passes(given) ? gradesBelow(grade) : gradesAbove(grade)) {
        const here = yield* tried(name);
        values += 1;
        if (passes(here) !== passes(given)) {
            return { given, last: here, values, turn: passes(given) ? { passing: last, failing: here } : { passing: here, failing: last } };
        }
        last = here;
    }
    return { given, last, values };
}
