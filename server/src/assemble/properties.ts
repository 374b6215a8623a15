/** What the analysis needs of each member's and each hanger's stiffness. */
import type { BoltRow, Finding, Hanger, Member, Model, Splice } from '../../../language/src/model.js';
import { isProblem, type Problem } from '../analysis/problem.js';
import { spliceLayout, spliceStiffness } from '../analysis/splice-layout.js';
import type { ElasticProperties, HangerElasticity, PropertiesOf, WholeSection } from '../analysis/index.js';
import { flitchElement, rolledElement, type MemberElement } from '../catalog/elements.js';
import type { Parameters } from '../catalog/parameters.js';
import { steelNamed } from '../catalog/steel-material.js';
import type { TimberStrength } from '../catalog/timber.js';
import type { SteelMember } from '../checks/en1993/steel-member.js';
import { slipModulus } from '../checks/en1995/fasteners/slip.js';
import { hangerElasticity, type HungMember } from '../checks/hanger/elasticity.js';
import type { Subject } from './subjects.js';

/** Looked up once for the whole file; a hanger that cannot be built as it is said is a finding. */
export function propertiesOf(model: Model, subjects: ReadonlyMap<string, Subject>, parameters: Parameters): { readonly properties: PropertiesOf; readonly findings: readonly Finding[] } {
    const findings: Finding[] = [];
    const hangers = new Map(model.hangers.map(hanger => {
        const spring = ofHanger(hanger, model, subjects, parameters);
        if (spring && isProblem(spring)) {
            findings.push({ severity: 'error', code: 'hanger-unsound', message: `${hanger.name}: ${spring.problem}`, source: hanger.usedAt ?? hanger.source });
        }
        return [hanger.name, spring && isProblem(spring) ? undefined : spring];
    }));
    return {
        properties: {
            member: member => elasticProperties(member, subjects.get(member.name), model, parameters),
            hanger: ({ name }) => hangers.get(name)
        },
        findings
    };
}

/** Undefined where one of its members is not there; the language says so. */
function ofHanger(hanger: Hanger, model: Model, subjects: ReadonlyMap<string, Subject>, parameters: Parameters): HangerElasticity | Problem | undefined {
    const hung = (name: string): HungMember | undefined => {
        const member = model.members.find(candidate => candidate.name === name);
        const subject = subjects.get(name);
        return member && subject && { member, ...(subject.kind === 'timber' ? { strength: subject.strength } : {}) };
    };
    const [carried, carrier] = [hung(hanger.carries), hung(hanger.from)];
    return carried && carrier && hangerElasticity(hanger, { carried, carrier }, model.materials, parameters.kdef('solid', model.job.serviceClass));
}

/** Mean values, EN 1995-1-1 2.3.2.2 and Table 3.2; undefined where something that they need is not known. */
function elasticProperties(member: Member, subject: Subject | undefined, model: Model, parameters: Parameters): ElasticProperties | undefined {
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
