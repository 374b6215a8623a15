import type { Verdict } from '../../server/src/checks/verdict.js';
import { rolledSection } from '../../server/src/catalog/rolled-sections.js';
import type { SteelSection } from '../../server/src/catalog/section-geometry.js';
import { steelStrength } from '../../server/src/catalog/steel.js';
import { createParameters } from '../../server/src/catalog/parameters.js';
import type { SteelParameters } from '../../server/src/catalog/steel-parameters.js';
import type { SteelMember } from '../../server/src/checks/en1993/steel-member.js';

export { sound as good } from '../fasteners/sound.js';

export function sectionOf(name: string): SteelSection {
    const section = rolledSection(name);
    if (!section) {
        throw new Error(`no section ${name}`);
    }
    return section;
}

export function memberOf(name: string, grade = 'S235', parameters: Partial<SteelParameters> = {}): SteelMember {
    const section = sectionOf(name);
    return { section, steel: steelStrength(grade, Math.max(section.tf, section.tw))!, parameters: { ...createParameters([]).parameters.steel, ...parameters } };
}

/** The result of the explained line with that symbol. */
export function line(verdict: Verdict, symbol: string): number {
    const found = verdict.explain().find(step => step.symbol === symbol);
    if (!found) {
        throw new Error(`no line ${symbol}`);
    }
    return found.result.value;
}

/** A term's number in the first line that has it. */
export function term(verdict: Verdict, symbol: string): number {
    const found = verdict.explain().flatMap(step => step.terms).find(one => one.symbol === symbol);
    if (!found) {
        throw new Error(`no term ${symbol}`);
    }
    return found.amount.value;
}
