/**
 * Solves every part of every load through all stages, one stage being the plain case.
 *
 * What is built in is free of stress on the shape that is there: an element's force comes from what its ends have moved
 * since. After each step what is still out of balance (loads that came, forces of what went) moves the structure on.
 * Everything is linear, so parts go through apart and are added up.
 */
import { elongation } from './links.js';
import type { StagePlan, Step } from './stages.js';
import { hasElement, hasLink, structureOf, type Kit, type Standing, type Structure } from './structure.js';
import type { Part, UnitCases } from './unit-cases.js';
import { addTo, noSolution, solutionOf, type Course, type UnitSolution } from './unit-solutions.js';
import { nodalLoads } from './element.js';

/** Of one stage. */
export interface UnitSolutions {
    readonly ofCases: readonly UnitSolution[];
    /** By part: the holds alone. */
    readonly holdsOfParts: readonly Float64Array[];
}

type Built = Structure & { readonly step: Step };

/** A plan with its structures. */
export interface BuiltStage {
    readonly plan: StagePlan;
    readonly steps: readonly Built[];
    /** What stands when it is done, every hanger a spring. */
    readonly done: Built;
}

export function build(kit: Kit, plans: readonly StagePlan[]): BuiltStage[] {
    return plans.map((plan) => {
        const steps = plan.steps.map((step): Built => ({ step, ...structureOf(kit, step.standing, new Set(step.tightened.keys())) }));
        const last = steps.at(-1)!;
        const { standing, tightened } = last.step;
        const step = { standing, tightened: none, lifted: none };
        return { plan, steps, done: { ...(tightened.size > 0 ? structureOf(kit, standing) : last), step } };
    });
}

export function solveUnitCases(kit: Kit, stages: readonly BuiltStage[], { cases, parts }: UnitCases): UnitSolutions[] {
    const { mesh } = kit;
    const found = stages.map(() => ({
        ofCases: cases.map(() => noSolution(mesh)), holdsOfParts: [] as Float64Array[]
    }));
    const nothing = noSolution(mesh);
    for (const part of parts) {
        let course = atRest(kit);
        stages.forEach(({ steps, done }, s) => {
            const here = stands(part, done.step.standing);
            const acts = part.stages === 'on' || (part.stages.includes(s) && here);
            if (part.stages === 'on') for (const built of steps) advance(kit, course, built, part);
            else if (acts) advance(kit, course = atRest(kit), done, part);
            const solution = acts ? solutionOf(mesh, course, here ? part : undefined) : nothing;
            if (acts) {
                solution.props.set(propForces(kit, course, done.step.standing, part));
                addTo(found[s]!.ofCases[part.unit]!, solution);
            }
            found[s]!.holdsOfParts.push(solution.holds);
        });
    }
    return found;
}

const none: ReadonlyMap<number, number> = new Map();

function atRest({ mesh }: Kit): Course {
    return { moved: new Float64Array(6 * mesh.elements.length), links: new Float64Array(mesh.links.length) };
}

function stands({ piece }: Part, { pieces }: Standing): boolean {
    return pieces[piece] === 1;
}

/** One step of one part: `course` is moved on. */
function advance(kit: Kit, course: Course, { step, system, held }: Built, part: Part): void {
    const { mesh } = kit;
    const { moved, links } = course;
    mesh.elements.forEach(({ id }) => { if (!hasElement(mesh, step.standing, id)) moved.fill(0, 6 * id, 6 * id + 6); });
    mesh.links.forEach((_, index) => { if (!hasLink(mesh, step.standing, index)) links[index] = 0; });
    // A tightened hanger is a pair of forces, whatever it carried before.
    for (const [hanger, force] of step.tightened) links[mesh.hangers[hanger]!] = part.kind === 'tightening' ? force : 0;

    const pull = unbalanced(kit, course, step.standing, part);
    const shift = new Float64Array(mesh.size);
    if (part.kind === 'lift') for (const [prop, lift] of step.lifted) shift[mesh.props[prop]!] = lift;
    if (!pull.some((force, dof) => force !== 0 && !held[dof]) && !shift.some((value) => value !== 0)) return;
    const u = system.solve(pull, shift);
    mesh.elements.forEach(({ id, dofs }) => {
        if (hasElement(mesh, step.standing, id)) for (let i = 0; i < 6; i++) moved[6 * id + i]! += u[dofs[i]!]!;
    });
    mesh.links.forEach((link, index) => {
        if (!hasLink(mesh, step.standing, index) || (link.hanger !== undefined && step.tightened.has(link.hanger))) return;
        links[index]! += link.stiffness * elongation(link, u);
    });
}

/** What acts on each degree of freedom less what elements and links resist. */
function unbalanced({ mesh, elements }: Kit, { moved, links }: Course, standing: Standing, part: Part): Float64Array {
    const pull = new Float64Array(mesh.size);
    if (stands(part, standing)) {
        for (const { element, load } of part.lines) {
            const one = mesh.elements[element]!;
            nodalLoads(one, load).forEach((force, i) => { pull[one.dofs[i]!]! += force; });
        }
        for (const { dofs, right, up } of part.points) {
            pull[dofs.u]! += right;
            pull[dofs.v]! += up;
        }
    }
    for (const { id, dofs } of mesh.elements) {
        const own = moved.subarray(6 * id, 6 * id + 6);
        if (own.every((value) => value === 0)) continue;
        const { matrix } = elements[id]!;
        for (let i = 0; i < 6; i++) for (let j = 0; j < 6; j++) pull[dofs[i]!]! -= matrix[6 * i + j]! * own[j]!;
    }
    mesh.links.forEach(({ dofs, row }, index) => {
        const force = links[index]!;
        if (force !== 0) dofs.forEach((dof, i) => { pull[dof]! -= force * row[i]!; });
    });
    return pull;
}

/** Props at one place share what acts there. */
function propForces(kit: Kit, course: Course, standing: Standing, part: Part): Float64Array {
    const { props } = kit.mesh;
    if (!standing.props.includes(1)) return new Float64Array(props.length);
    const pull = unbalanced(kit, course, standing, part);
    const together = (dof: number): number => props.filter((other, i) => other === dof && standing.props[i]).length;
    return Float64Array.from(props, (dof, i) => (standing.props[i] ? -pull[dof]! / together(dof) : 0));
}
