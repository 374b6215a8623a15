/** EN 1993-1-1 5.5 and Table 5.2: classes of the web and the outstand flanges, bending about the strong axis with compression. */
import type { SteelSection } from '../../catalog/section-geometry.js';
import type { SteelStrength } from '../../catalog/steel.js';
import type { Step } from '../../results.js';
import { plain, step } from '../steps.js';
import { isProblem, problem, unsound, type Problem } from '../verdict.js';
import { epsilon } from './steel-member.js';

export type SectionClass = 1 | 2 | 3;

export interface Classification {
    readonly sectionClass: SectionClass;
    readonly explain: () => readonly Step[];
}

interface Part {
    readonly name: 'web' | 'flange';
    readonly c: number;
    readonly t: number;
    readonly limits: readonly [first: number, second: number, third: number];
}

/**
 * Class of the section in bending with an axial compression N (N; tension as 0).
 * Old iron is class 3 at best: plastic stress needs a ductility that nobody has shown. A flat is class 1: what buckles of
 * it is the whole flat, sideways, which is checked as stability.
 * A problem for class 4 (its effective section, EN 1993-1-5 4, is not covered).
 */
export function classify(section: SteelSection, steel: SteelStrength, compression = 0): Classification | Problem {
    const bad = unsound('not negative', { 'the compression': compression });
    if (bad) {
        return bad;
    }
    const parts = section.shape === 'plate' ? [] : partsOf(section, steel.fy, compression);
    const classes = parts.map(classOf);
    if (classes.includes(4)) {
        return problem(`${section.name} in ${steel.name} is class 4 here: its effective section (EN 1993-1-5 4) is not covered`);
    }
    const least: SectionClass = steel.ductile ? 1 : 3;
    const sectionClass = Math.max(least, ...classes) as SectionClass;
    return { sectionClass, explain: () => parts.map(part => explainPart(part, steel.fy)) };
}

/** As `classify`, for a check that goes on only with a class. */
export function withClass<T>(section: SteelSection, steel: SteelStrength, compression: number, go: (found: Classification) => T): T | Problem {
    const found = classify(section, steel, compression);
    return isProblem(found) ? found : go(found);
}

function partsOf(section: SteelSection, fy: number, compression: number): readonly Part[] {
    const { h, b, tw, tf, r } = section;
    const e = epsilon(fy);
    const web = h - 2 * tf - 2 * r;
    const outstand = (section.shape === 'I' ? (b - tw) / 2 : b - tw) - r;
    return [
        { name: 'web', c: web, t: tw, limits: webLimits({ web, tw, fy, A: section.A, compression, e }) },
        { name: 'flange', c: outstand, t: tf, limits: [9 * e, 10 * e, 14 * e] }
    ];
}

/** Table 5.2 sheet 1, part subject to bending and compression: α of the plastic and ψ of the elastic stress. */
function webLimits(given: { web: number; tw: number; fy: number; A: number; compression: number; e: number }): Part['limits'] {
    const { web, tw, fy, A, compression, e } = given;
    const alpha = Math.min(0.5 * (1 + compression / (web * tw * fy)), 1);
    const psi = Math.min(2 * compression / (A * fy) - 1, 1);
    return [
        alpha > 0.5 ? 396 * e / (13 * alpha - 1) : 36 * e / alpha,
        alpha > 0.5 ? 456 * e / (13 * alpha - 1) : 41.5 * e / alpha,
        psi > -1 ? 42 * e / (0.67 + 0.33 * psi) : 62 * e * (1 - psi) * Math.sqrt(-psi)
    ];
}

function classOf({ c, t, limits }: Part): 1 | 2 | 3 | 4 {
    const found = limits.findIndex(limit => c / t <= limit);
    return found < 0 ? 4 : (found + 1) as 1 | 2 | 3;
}

function explainPart(part: Part, fy: number): Step {
    const [first, second, third] = part.limits.map(limit => limit.toFixed(1));
    const t = part.name === 'web' ? 't_w' : 't_f';
    return step(`(c/t)_{${part.name}}`, `\\frac{c}{${t}}`, [
        ['c', part.c, 'mm', part.name === 'web' ? 'between the root radii' : 'outstand'], [t, part.t, 'mm']
    ], plain(part.c / part.t), {
        clause: 'EN 1993-1-1 Table 5.2',
        note: `class ${classOf(part)}: limits ${first}, ${second}, ${third} with ε = ${epsilon(fy).toFixed(3)}`
    });
}
