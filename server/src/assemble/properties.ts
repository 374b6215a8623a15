/** What the analysis needs of each member's stiffness and weight. */
import type { BoltRow, Member, Model, Splice } from '../../../language/src/model.js';
import { isProblem } from '../analysis/problem.js';
import { spliceLayout, spliceStiffness } from '../analysis/splice-layout.js';
import type { ElasticProperties, WholeSection } from '../analysis/index.js';
import { flitchElement, rolledElement, type MemberElement } from '../catalog/elements.js';
import type { Parameters } from '../catalog/parameters.js';
import { steelNamed } from '../catalog/steel-material.js';
import type { TimberStrength } from '../catalog/timber.js';
import type { SteelMember } from '../checks/en1993/steel-member.js';
import { slipModulus } from '../checks/en1995/fasteners/slip.js';
import type { Subject } from './subjects.js';

/** Mean values, EN 1995-1-1 2.3.2.2 and Table 3.2; undefined where something that they need is not known. */
export function elasticProperties(member: Member, subject: Subject | undefined, model: Model, parameters: Parameters): ElasticProperties | undefined {
    switch (subject?.kind) {
        case 'timber': return ofTimber(member, subject.strength, model, parameters);
        case 'steel': return ofSteel(subject.steel, model);
        default: return undefined;
    }
}

function ofTimber(member: Member, strength: TimberStrength, model: Model, parameters: Parameters): ElasticProperties | undefined {
    const moduli = {
        E: strength.E0_mean, G: strength.G_mean, density: strength.rho_mean,
        kdef: parameters.kdef(strength.product, model.job.serviceClass)
    };
    const { section } = member;
    if (section.shape === 'plies') {
        return { ...moduli, slip: row => slipOf(row, strength) };
    }
    if (section.shape === 'flitch') {
        const plate = steelNamed(section.steel.value, section.thickness.value, model.materials);
        const element = 'steel' in plate ? flitchElement(section, moduli, plate.steel) : undefined;
        return element && !isProblem(element) ? {
            ...moduli,
            section: whole(element, section.leaves * section.breadth.value + section.plates * section.thickness.value, section.depth.value)
        } : undefined;
    }
    return moduli;
}

function slipOf(row: BoltRow, { rho_mean }: TimberStrength): number | undefined {
    const slip = slipModulus(row.diameter, { rho_mean }, { rho_mean });
    return isProblem(slip) ? undefined : slip.K_ser;
}

function ofSteel({ section, steel }: SteelMember, model: Model): ElasticProperties {
    const { E, G, density } = steel;
    return {
        E, G, density, kdef: 0,
        section: whole(rolledElement(section, steel), section.b, section.h),
        splice: splice => rotation(splice, { section, steel }, model)
    };
}

/** Of a splice that is not covered none is known: the check of it says so. */
function rotation(splice: Splice, { section, steel }: Pick<SteelMember, 'section' | 'steel'>, model: Model): number | undefined {
    const layout = spliceLayout(splice, section);
    if (isProblem(layout)) {
        return undefined;
    }
    const plate = steelNamed(layout.plate.steel, layout.plate.thickness.value, model.materials);
    const fu = Math.min(steel.fu ?? Infinity, 'steel' in plate ? plate.steel.fu ?? Infinity : Infinity);
    return Number.isFinite(fu) ? spliceStiffness(layout, fu).rotational : undefined;
}

function whole({ instant, final, mass }: MemberElement, breadth: number, depth: number): WholeSection {
    return { instant, final, mass, breadth, depth };
}
