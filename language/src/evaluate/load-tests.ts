/** Proof loads: what lies on what, and what was read. */
import * as ast from '../generated/ast.js';
import type { Given, LoadTest, TestReading, TestWeight } from '../model.js';
import type { Quantity } from '../quantity.js';
import * as dim from '../quantity.js';
import { sameDimension, standardGravity } from '../quantity.js';
import { formatQuantity } from '../units.js';
import type { Context } from './context.js';
import { fail, source } from './context.js';
import type { Expectation } from './inputs.js';
import { aDepth, aLength, aStation, given, givenValue } from './inputs.js';
import { leafCount, leafNumbers } from './leaves.js';
import { quantityOf } from './named-quantities.js';
import { resolve } from './names.js';
import { outside } from './supports.js';

const aWeight: Expectation = { dimensions: [dim.mass, dim.force], usual: 'kg', sign: 'positive' };
const aReadWeight: Expectation = { ...aWeight, sign: 'not negative' };
const kilograms = (value: number) => formatQuantity({ value, dimension: dim.mass }, 'kg');

/** Undefined where the test is wrong; then that is reported. */
export function evaluateLoadTest(outer: Context, node: ast.LoadTest): LoadTest | undefined {
    // No check depends on what is said here: it is neither in the ledger nor varied.
    const context: Context = { ...outer, paths: new Set(), inputs: [] };
    const [piece, again] = node.steps.filter(ast.isTestPiece);
    if (piece === undefined) {
        return fail(context, 'load-test-on-nothing', `${node.name} tests nothing: say what is on blocks, such as T9 on blocks at 0.30 m, 3.70 m`, source(context, node, 'name'));
    }
    if (again !== undefined) {
        fail(context, 'said-twice', `${node.name} says this twice`, source(context, again));
    }
    const member = resolve(context, piece.member, piece, ast.isMember, 'a member');
    const leaves = member && piece.leaves.length > 0 ? leafNumbers(context, piece, leafCount(member)) : undefined;
    const blocks = blocksOf(context, node, piece, member);
    const weights = weightsOf(context, node, blocks);
    const readings = readingsOf(context, node, weights);
    if (member === undefined) {
        return undefined;
    }
    return {
        name: node.name, ...(node.title !== undefined && { title: node.title }), member: member.name, ...(leaves && { leaves }),
        blocks, weights, readings, source: source(context, node)
    };
}

function blocksOf(context: Context, node: ast.LoadTest, piece: ast.TestPiece, member: ast.Member | undefined): readonly Given[] {
    const whole = member && quantityOf(member, 'length')?.(context)?.value;
    const blocks = piece.stations.flatMap((station, i) => given(context, station, `${node.name}.block${i === 0 ? '' : i + 1}`, aStation) ?? []);
    const sorted = [...blocks].sort((a, b) => a.value - b.value);
    const astray = whole === undefined ? undefined : blocks.find(({ value }) => value < 0 || value > whole);
    const twice = sorted.find((block, i) => i > 0 && block.value - sorted[i - 1]!.value < 1e-6);
    if (astray !== undefined) {
        fail(context, 'block-outside', `this block is ${outside(astray.value, whole!)} of ${member!.name}`, astray.source);
    } else if (twice !== undefined) {
        fail(context, 'duplicate-support', 'there is a block at this station already', twice.source);
    } else if (piece.stations.length < 2) {
        fail(context, 'too-few-blocks', 'a piece lies on two blocks at least, such as on blocks at 0.30 m, 3.70 m', source(context, piece));
    }
    return sorted;
}

function weightsOf(context: Context, node: ast.LoadTest, blocks: readonly Given[]): readonly TestWeight[] {
    const nodes = node.steps.filter(ast.isTestWeight);
    if (nodes.length === 0) {
        fail(context, 'no-weights', `${node.name} has no weights: say them, such as weight 240 kg at 2.00 m`, source(context, node, 'name'));
    }
    const weights = nodes.flatMap((step, i) => weightOf(context, step, `${node.name}.weight${i === 0 ? '' : i + 1}`, blocks) ?? []);
    weights.forEach((weight, i) => {
        const first = weights.slice(0, i).find(other => isMass(other.mass, weight.mass.value));
        if (first !== undefined) {
            fail(context, 'duplicate-weight', `there is a weight of ${kilograms(weight.mass.value)} already: readings tell weights by their mass`, weight.mass.source,
                { related: [{ message: 'the first is here', source: first.source }] });
        }
    });
    return weights;
}

function weightOf(context: Context, step: ast.TestWeight, path: string, blocks: readonly Given[]): TestWeight | undefined {
    const mass = massOf(givenValue(context, step.amount, step.evidence, path, aWeight));
    const at = given(context, step.at, `${path}.at`, aStation);
    const spread = step.spread && given(context, step.spread, `${path}.spread`, aLength);
    if (mass === undefined || at === undefined || (step.spread && spread === undefined)) {
        return undefined;
    }
    const [first, last] = [blocks[0]?.value, blocks.at(-1)?.value];
    const half = (spread?.value ?? 0) / 2;
    if (first !== undefined && last !== undefined && blocks.length > 1 && (at.value - half < first - 1e-6 || at.value + half > last + 1e-6)) {
        return fail(context, 'weight-outside', at.value < first || at.value > last ? 'this weight lies between no blocks' : 'this weight reaches past the blocks', at.value < first || at.value > last ? at.source : spread!.source,
            { related: [{ message: 'the nearest block is here', source: (at.value - half < first ? blocks[0]! : blocks.at(-1)!).source }] });
    }
    return { mass, at, ...(spread && { spread }), source: source(context, step) };
}

function massOf(weight: Given | undefined): Given | undefined {
    return weight && sameDimension(weight.dimension!, dim.force) ? { ...weight, value: weight.value / standardGravity, dimension: dim.mass } : weight;
}

const isMass = ({ value }: Quantity | Given, mass: number): boolean => Math.abs(value - mass) <= 1e-6 * mass;

function readingsOf(context: Context, node: ast.LoadTest, weights: readonly TestWeight[]): readonly TestReading[] {
    return node.steps.filter(ast.isTestReading).flatMap((step, i) => {
        const path = `${node.name}.read${i === 0 ? '' : i + 1}`;
        const mass = massOf(givenValue(context, step.weight, undefined, `${path}.mass`, aReadWeight));
        const deflection = given(context, step.deflection, path, aDepth);
        if (mass === undefined || deflection === undefined) {
            return [];
        }
        if (mass.value > 0 && !weights.some(weight => isMass(weight.mass, mass.value))) {
            const known = weights.map(weight => kilograms(weight.mass.value)).join(', ');
            return fail(context, 'unknown-weight', `no weight of ${kilograms(mass.value)} lies on it: there is ${known || 'none'}, and 0 kg after unloading`, mass.source) ?? [];
        }
        return [{ mass, deflection, source: source(context, step) }];
    });
}
