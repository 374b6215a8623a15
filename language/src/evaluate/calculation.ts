/** What the declarations of a calculation mean: its model, of what is sound. */
import * as ast from '../generated/ast.js';
import type { Model } from '../model.js';
import { evaluateAnswers } from './answers.js';
import { checkParameters } from './arguments.js';
import { spread, wordsOf } from './broken.js';
import type { Context } from './context.js';
import { attempt, fail, newContext, report, source } from './context.js';
import { atUse, expandUse, memberNamesOf, withinDetail } from './details.js';
import { evaluateHanger } from './hangers.js';
import type { Expansions } from './expand-parts.js';
import type { ReadFile } from './includes.js';
import { evaluateAccess, evaluateJob, evaluateValues } from './job.js';
import { nameLeftOut } from './left-out.js';
import { evaluateLets } from './lets.js';
import { evaluateLoad } from './loads.js';
import { evaluateMaterial, evaluateWall } from './materials.js';
import { evaluateMember } from './members.js';
import { collectNames, reportDuplicates } from './names.js';
import { checkPresence } from './presence.js';
import { evaluateRequirement } from './requirements.js';
import { evaluateStage, withoutUnsound } from './stages.js';
import { evaluateSurvey } from './survey.js';
import type { SyntaxError } from './syntax.js';

/** What was read of a file and those that it includes. */
export interface Reading {
    /** The main one first. */
    readonly files: readonly ReadFile[];
    /** Included files are read here. */
    readonly included: boolean;
    /** A file that may hold a detail was not read. */
    readonly incomplete: boolean;
    readonly errors: readonly SyntaxError[];
    readonly unsound: ReadonlySet<ast.Declaration>;
    readonly expansions: Expansions;
}

export interface Calculation {
    readonly context: Context;
    /** Without what is asked of it: options, load tests and break-evens. */
    readonly model: Model;
    /** Why members are not in it, by their names. */
    readonly broken: ReadonlyMap<string, string>;
}

type SoundOf = <N extends ast.Declaration & { readonly name: string }, R>(nodes: readonly N[], step: (node: N) => R | undefined, onError: (node: N) => void) => R[];

/** Those that have no error of their own. */
export function soundOf(context: Context, unsound: ReadonlySet<ast.Declaration>): SoundOf {
    return (nodes, step, onError) => nodes.filter(node => node.name).flatMap(node => {
        const { value, sound } = attempt(context, () => step(node));
        if (!sound || value === undefined || unsound.has(node)) {
            onError(node);
            return [];
        }
        return [value];
    });
}

/** `root` holds the declarations of all files that were read. */
export function evaluateCalculation(read: Reading, root: ast.Calculation): Calculation {
    const main = read.files[0]!;
    const { errors, unsound } = read;
    const context = newContext(new Map(read.files.map(one => [one.root, one.file])), collectNames(root, read.expansions.origins), read.expansions);
    const sound = soundOf(context, unsound);
    const of = (node: ast.Declaration) => withinDetail(context, node);
    const reasons = new Map<string, string>();
    const job = evaluateJob(context, main.root);
    reportIncludedJobs(context, read.files.slice(1));
    reportDuplicates(context);
    const values = evaluateValues(context, root);
    evaluateLets(context, root);

    const badThings = new Set<string>();
    const materials = sound(root.declarations.filter(isMaterial), node => evaluateMaterial(of(node), node), node => badThings.add(node.name));
    const walls = sound(root.declarations.filter(ast.isWall), node => evaluateWall(of(node), node), node => badThings.add(node.name));
    root.declarations.filter(ast.isWall).filter(wall => wall.facts.some(fact => ast.isOfMaterial(fact) && badThings.has(fact.material?.$refText ?? '')))
        .forEach(wall => badThings.add(wall.name));
    const memberNodes = root.declarations.filter(ast.isMember);
    const members = sound(memberNodes, node => atUse(context, node, evaluateMember(of(node), node)), node => reasons.set(node.name, 'it has an error'));
    memberNodes.forEach(node => dependOnBad(node, badThings, reasons));
    context.names.duplicates.forEach(({ again, first }) => [again, first].filter(ast.isMember).forEach(node => reasons.set(node.name, 'its name is given twice')));

    const loseMembers = (node: ast.Declaration, why: string) => [
        ...wordsOf(node).filter(word => ast.isMember(context.names.things.get(word))), ...ast.isUse(node) ? memberNamesOf(context, node.name) : []
    ].filter(name => !reasons.has(name)).forEach(name => reasons.set(name, why));
    const loads = sound(root.declarations.filter(ast.isLoad), node => atUse(context, node, evaluateLoad(of(node), node)), node => loseLoad(context, node, reasons));
    root.declarations.filter(ast.isDetail).forEach(node => checkParameters(context, node));
    const hangers = [
        ...sound(namedHangers(context, root), node => evaluateHanger(context, node, node.name), node => loseMembers(node, `hanger ${node.name} on it has an error`)),
        ...sound(root.declarations.filter(ast.isUse), node => expandUse(context, node, read.incomplete), node => loseMembers(node, `${node.name}, which uses it, has an error`)).flat()
    ];
    errors.flatMap(error => error.skipped).filter(word => ast.isMember(context.names.things.get(word)) && !reasons.has(word))
        .forEach(word => reasons.set(word, 'a line that could not be read names it'));
    const stages = root.declarations.filter(ast.isStage).filter(node => node.name).map(node => ({ node, ...attempt(context, () => evaluateStage(context, node)) }));
    const unsoundStages = stages.filter(({ node, sound }) => !sound || unsound.has(node));
    unsoundStages.forEach(({ node }) => loseMembers(node, `stage ${node.name}, which names it, has an error`));
    const events = stages.map(({ value }) => ({ ...value.stage, events: value.events }));
    const inOrder = unsoundStages.length > 0
        || attempt(context, () => checkPresence(context, events, members, hangers, [...memberNodes, ...hangers].map(node => node.name))).sound;
    if (!inOrder) {
        stages.forEach(({ node }) => loseMembers(node, 'the stages have an error'));
    }
    spread(root, unsound, reasons, hangers);


    const requirements = root.declarations.filter(ast.isRequire).flatMap(node => evaluateRequirement(context, node) ?? []);
    const answers = evaluateAnswers(context, root, unsound);
    const survey = evaluateSurvey(context, root);
    const access = evaluateAccess(context, root);
    nameLeftOut(context, root, read.included);
    const soundMembers = members.filter(({ name }) => !reasons.has(name));
    const soundHangers = hangers.filter(({ carries, from }) => !reasons.has(carries) && !reasons.has(from));
    const model: Model = {
        file: main.file, files: read.files.map(one => one.file), job, values, materials, walls, members: soundMembers,
        loads: loads.filter(load => !reasons.has(load.member)), hangers: soundHangers,
        stages: stages.map(({ value }) => withoutUnsound(value.stage, soundMembers, soundHangers)),
        requirements, breakEvens: [], loadTests: [], options: [], answers, survey, access,
        notComputed: [...context.notComputed.values()], inputs: context.inputs
    };
    return { context, model, broken: reasons };
}

function reportIncludedJobs(context: Context, included: readonly ReadFile[]): void {
    for (const job of included.flatMap(({ root }) => root.declarations.filter(ast.isJob))) {
        report(context, 'warning', 'included-job', 'this file is included in another job: the settings of its own are not used there', source(context, job, 'title'));
    }
}

function namedHangers(context: Context, root: ast.Calculation): readonly (ast.Hanger & { readonly name: string })[] {
    return root.declarations.filter(ast.isHanger).flatMap(node => (node.name === undefined
        ? fail(context, 'no-name', 'this hanger has no name: only in a detail may it go without, and is called as the use is', source(context, node)) ?? []
        : [node as ast.Hanger & { readonly name: string }]));
}

const isMaterial = (node: ast.Declaration): node is ast.Timber | ast.Steel | ast.Masonry => ast.isTimber(node) || ast.isSteel(node) || ast.isMasonry(node);

function dependOnBad(node: ast.Member, bad: ReadonlySet<string>, reasons: Map<string, string>): void {
    const used = node.statements.map(statement => (ast.isBearing(statement) ? statement.on : ast.isOfMaterial(statement) ? statement.material : undefined)?.$refText);
    const culprit = used.find(name => name !== undefined && bad.has(name));
    if (culprit !== undefined && !reasons.has(node.name)) {
        reasons.set(node.name, `${culprit}, which it needs, has an error`);
    }
}

/** A member whose load could not be read would seem safer than it is. Where the load stands may itself be what is broken. */
function loseLoad(context: Context, node: ast.Load, reasons: Map<string, string>): void {
    const named = node.parts.find(ast.isLoadOn)?.member?.$refText;
    for (const word of named === undefined ? wordsOf(node) : [named]) {
        if (ast.isMember(context.names.things.get(word)) && !reasons.has(word)) {
            reasons.set(word, `load ${node.name} on it has an error`);
        }
    }
}

