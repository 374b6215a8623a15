/**
 * Solves every part of every load through all stages, one stage being the plain case.
 *
 * What is built in is free of stress on the shape that is there: an element's force comes from what its ends have moved
 * since. After each step what is still out of balance (loads that came, forces of what went) moves the structure on.
 * Everything is linear, so parts go through apart and are added up.
 */
import { elongation } from './links.js';
import type { Mesh } from './mesh.js';
import type { StagePlan, Step } from './stages.js';
import { structureOf, type Kit, type Standing, type Structure } from './structure.js';
import type { Part, UnitCases } from './unit-cases.js';
import { addTo, copyOf, isStill, noSolution, solutionOf, type Course, type UnitSolution } from './unit-solutions.js';
import { nodalLoads } from './element.js';

/** Of one stage. */
export interface UnitSolutions {
    readonly ofCases: readonly UnitSolution[];
    /** By part of a permanent case: the holds alone. */
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

/** `like` is the same built of other stiffness: it tells a good order of the unknowns. */
export function build(kit: Kit, plans: readonly StagePlan[], like?: readonly BuiltStage[]): BuiltStage[] {
    return plans.map((plan, s) => {
        const steps = plan.steps.map((step, i): Built =>
            ({ step, ...structureOf(kit, step.standing, { slack: new Set(step.tightened.keys()), order: like?.[s]?.steps[i]?.system.order }) }));
        const last = steps.at(-1)!;
        const { standing, tightened } = last.step;
        const step = { standing, tightened: none, lifted: none };
        return { plan, steps, done: { ...(tightened.size > 0 ? structureOf(kit, standing) : last), step } };
    });
}

/** What a part of a load does in a stage; absent where it does nothing. */
type PartSolution = UnitSolution | undefined;

/** `recall` gives what was found before of the same part. */
export function solveUnitCases(kit: Kit, stages: readonly BuiltStage[], { cases, parts }: UnitCases, recall: (part: Part, make: () => readonly PartSolution[]) => readonly PartSolution[] = (_, make) => make()): UnitSolutions[] {
    const { mesh } = kit;
    const found = stages.map(() => ({ ofCases: new Array<UnitSolution | undefined>(cases.length), holdsOfParts: [] as Float64Array[] }));
    const nothing = noSolution(mesh);
    const shared = new Set<number>();
    for (const part of parts) {
        const { unit } = part;
        const permanent = cases[unit]!.permanent;
        recall(part, () => solvePart(kit, stages, part)).forEach((solution, s) => {
            const { ofCases, holdsOfParts } = found[s]!;
            holdsOfParts.push(permanent && solution ? solution.holds : nothing.holds);
            if (!solution) return;
            const sum = ofCases[unit];
            const place = s * cases.length + unit;
            if (!sum) {
                ofCases[unit] = solution;
                shared.add(place);
            } else {
                // The first part's is its own, and is told apart from the whole.
                if (shared.delete(place)) ofCases[unit] = copyOf(sum);
                addTo(ofCases[unit]!, solution);
            }
        });
    }
    return found.map(({ ofCases, holdsOfParts }) => ({ ofCases: Array.from(ofCases, (one) => one ?? nothing), holdsOfParts }));
}

function solvePart(kit: Kit, stages: readonly BuiltStage[], part: Part): PartSolution[] {
    let course = atRest(kit);
    return stages.map(({ steps, done }, s) => {
        const here = stands(part, done.step.standing);
        if (part.stages === 'on') for (const built of steps) advance(kit, course, built, part);
        else if (part.stages.includes(s) && here) advance(kit, course = atRest(kit), done, part);
        else return undefined;
        const solution = solutionOf(kit.mesh, course, here ? part : undefined);
        solution.props.set(propForces(kit, course, done.step.standing, part));
        return solution;
    });
}

const none: ReadonlyMap<number, number> = new Map();

function atRest({ mesh }: Kit): Course {
    return { moved: new Float64Array(6 * mesh.elements.length), links: new Float64Array(mesh.links.length) };
}

function stands({ piece }: Part, { pieces }: Standing): boolean {
    return pieces[piece] === 1;
}

/** One step of one part: `course` is moved on. */
function advance({ mesh, elements, stiffest }: Kit, course: Course, { step, system, held, present }: Built, part: Part): void {
    const { moved, links } = course;
    for (let id = 0; id < present.elements.length; id++) if (!present.elements[id]) moved.fill(0, 6 * id, 6 * id + 6);
    for (let index = 0; index < links.length; index++) if (!present.links[index]) links[index] = 0;
    // A tightened hanger is a pair of forces, whatever it carried before.
    for (const [hanger, force] of step.tightened) links[mesh.hangers[hanger]!] = part.kind === 'tightening' ? force : 0;

    const pull = unbalanced(mesh, elements, course, step.standing, part);
    const shift = part.kind === 'lift' && step.lifted.size > 0 ? new Float64Array(mesh.size) : undefined;
    if (shift) for (const [prop, lift] of step.lifted) shift[mesh.props[prop]!] = lift;
    if (!shift && !anyFree(pull, held)) return;
    const u = system.solve(pull, shift);
    let least = 0;
    for (let id = 0; id < elements.length; id++) if (present.elements[id]) least = Math.max(least, farAway * stiffest[id]! * farthest(elements[id]!.dofs, u));
    for (let id = 0; id < elements.length; id++) {
        const { dofs } = elements[id]!;
        if (!present.elements[id] || stiffest[id]! * farthest(dofs, u) < least) continue;
        for (let i = 0; i < 6; i++) moved[6 * id + i]! += u[dofs[i]!]!;
    }
    for (let index = 0; index < links.length; index++) {
        const link = mesh.links[index]!;
        if (!present.links[index] || (link.hanger !== undefined && step.tightened.has(link.hanger))) continue;
        links[index]! += link.stiffness * elongation(link, u);
    }
}

/** Of the greatest stiffness times displacement: where it is less, many members away, an element feels nothing. */
const farAway = 1e-14;

function farthest(dofs: readonly number[], u: Float64Array): number {
    let most = 0;
    for (let i = 0; i < dofs.length; i++) most = Math.max(most, Math.abs(u[dofs[i]!]!));
    return most;
}

function anyFree(pull: Float64Array, held: Uint8Array): boolean {
    for (let dof = 0; dof < pull.length; dof++) if (pull[dof] !== 0 && !held[dof]) return true;
    return false;
}

/** What acts on each degree of freedom less what elements and links resist. */
function unbalanced(mesh: Mesh, blocks: Kit['elements'], { moved, links }: Course, standing: Standing, part: Part): Float64Array {
    const pull = new Float64Array(mesh.size);
    if (stands(part, standing)) {
        for (const { element, load } of part.lines) {
            const one = mesh.elements[element]!;
            const forces = nodalLoads(one, load);
            for (let i = 0; i < 6; i++) pull[one.dofs[i]!]! += forces[i]!;
        }
        for (const { dofs, right, up } of part.points) {
            pull[dofs.u]! += right;
            pull[dofs.v]! += up;
        }
    }
    for (let id = 0; id < blocks.length; id++) {
        if (isStill(moved, id)) continue;
        const { dofs, matrix } = blocks[id]!;
        for (let i = 0; i < 6; i++) {
            let sum = 0;
            for (let j = 0; j < 6; j++) sum += matrix[6 * i + j]! * moved[6 * id + j]!;
            pull[dofs[i]!]! -= sum;
        }
    }
    for (let index = 0; index < links.length; index++) {
        const force = links[index]!;
        if (force === 0) continue;
        const { dofs, row } = mesh.links[index]!;
        for (let i = 0; i < dofs.length; i++) pull[dofs[i]!]! -= force * row[i]!;
    }
    return pull;
}

/** Props at one place share what acts there. */
function propForces(kit: Kit, course: Course, standing: Standing, part: Part): Float64Array {
    const { props } = kit.mesh;
    if (!standing.props.includes(1)) return new Float64Array(props.length);
    const pull = unbalanced(kit.mesh, kit.elements, course, standing, part);
    const together = (dof: number): number => props.filter((other, i) => other === dof && standing.props[i]).length;
    return Float64Array.from(props, (dof, i) => (standing.props[i] ? -pull[dof]! / together(dof) : 0));
}
