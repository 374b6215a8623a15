/** Whether each piece that is brought in passes the access and can be carried: `access { piece <= …  carry <= … }`. */
import type { Access, Given, Member, Model } from '../../../language/src/model.js';
import type { Lacking } from '../assemble/unchecked.js';
import { plain, quotient, step } from '../checks/steps.js';
import type { CheckResult, Step, Term } from '../results.js';
import { against } from '../sheet/numbers.js';
import { broughtIn } from './brought-in.js';
import { piecesOf, type Piece } from './pieces.js';

/** Beside a member's other checks, as the language names them: `R1.piece` of the longest piece, `R1.carry` of the heaviest. */
export interface AccessRun { readonly checks: readonly CheckResult[]; readonly lacking: readonly Lacking[] }

/** The limits are the file's own: no clause stands behind them. */
const clauses = { piece: 'access of this file: piece', carry: 'access of this file: carry' } as const;

/**
 * Where no stage says what is brought in, what is within the limits is a check; what is not may stand there already, which
 * is then not known. An answer to the hazard of its weight or length settles that.
 */
export function accessChecks(model: Model): AccessRun {
    const { access } = model;
    if (!access?.piece && !access?.carry) {
        return { checks: [], lacking: [] };
    }
    const stages = broughtIn(model);
    const pieces = piecesOf(model);
    const runs = model.members.flatMap(member => {
        const stage = stages.get(member.name);
        return stage === undefined ? [] : [ofMember(member, stage, pieces.filter(piece => piece.member === member.name), access)];
    });
    const checks = runs.flatMap(run => run.checks);
    const isKnown = (check: CheckResult): boolean => check.pass || model.stages.length > 0;
    return {
        checks: checks.filter(isKnown),
        lacking: [...runs.flatMap(run => run.lacking), ...checks.filter(check => !isKnown(check)).map(check => unknownIn(model, check))]
    };
}

function unknownIn({ answers }: Model, { subject, check, combination, demand, capacity, source }: CheckResult): Lacking {
    const code = check === 'carry' ? 'piece-too-heavy' : 'piece-too-long';
    const answer = answers.find(one => one.hazard === code && (one.subject === undefined || one.subject === subject));
    return {
        subject, members: [subject], source, ...answer && { settled: answer.what },
        text: `${check}: ${combination} has ${against(demand, capacity)}, and no stage says whether it is brought in or stands there already`
    };
}

function ofMember(member: Member, stage: string | null, pieces: readonly Piece[], { piece: longest, carry }: Access): AccessRun {
    const checks: CheckResult[] = [];
    const lacking: Lacking[] = [];
    const add = (check: 'piece' | 'carry', { mark, from }: Piece, terms: Pair, steps: readonly Step[]): void => {
        const utilisation = useOf(terms);
        checks.push({
            id: `${member.name}.${check}`, subject: member.name, check, stage, option: null,
            utilisation, pass: utilisation <= 1, demand: terms[0].amount, capacity: terms[1].amount,
            combination: `piece ${mark}`, duration: '', at: { value: from / 1000, unit: 'm' },
            clause: clauses[check], steps: [...steps, lastStep(terms, clauses[check])], source: member.nameSource
        });
    };
    const [long] = [...pieces].sort((a, b) => b.length - a.length);
    if (longest && long) {
        add('piece', long, lengthTerms(long, longest), []);
    }
    if (carry && pieces.some(({ mass }) => mass === undefined)) {
        lacking.push({ subject: member.name, members: [member.name], text: 'carry: the density of its material is not known', source: member.source });
    }
    const [heavy] = pieces.filter(({ mass }) => mass !== undefined).sort((a, b) => b.mass! - a.mass!);
    if (carry && heavy) {
        const terms = massTerms(heavy, carry);
        add('carry', heavy, terms, [massStep(heavy, terms[0])]);
    }
    return { checks, lacking };
}

type Pair = readonly [demand: Term, capacity: Term];

function useOf([demand, capacity]: Pair): number {
    const use = quotient(demand.amount.value, capacity.amount.value);
    return use >= 0 ? use : Infinity;
}

function lengthTerms({ length }: Piece, limit: Given): Pair {
    return [
        { symbol: 'L', amount: { value: length / 1000, unit: 'm' }, meaning: 'length of the longest piece' },
        { symbol: 'L_{access}', amount: { value: limit.value / 1000, unit: 'm' }, meaning: 'longest that passes', source: limit.source }
    ];
}

function massTerms({ mass = NaN }: Piece, limit: Given): Pair {
    return [
        { symbol: 'm', amount: { value: mass, unit: 'kg' }, meaning: 'mass of the heaviest piece' },
        { symbol: 'm_{access}', amount: { value: limit.value, unit: 'kg' }, meaning: 'heaviest that is carried', source: limit.source }
    ];
}

function massStep({ mass = NaN, length, description }: Piece, { amount }: Term): Step {
    return step('m', 'g \\cdot L', [
        { symbol: 'g', amount: { value: 1000 * mass / length, unit: 'kg/m' }, meaning: `mass per length of ${description}, at mean density with its moisture` },
        { symbol: 'L', amount: { value: length / 1000, unit: 'm' }, meaning: 'its length' }
    ], amount, { note: 'losses, notches and holes are not taken off' });
}

function lastStep(terms: Pair, clause: string): Step {
    const [demand, capacity] = terms;
    return step('\\eta', `\\frac{${demand.symbol}}{${capacity.symbol}}`, terms, plain(useOf(terms)), { clause, note: 'has to be \\le 1' });
}

/** A piece that is over a limit. */
export interface AccessProblem {
    readonly piece: Piece;
    readonly limit: 'piece' | 'carry';
    /** mm, or kg. */
    readonly value: number;
    readonly most: number;
    readonly given: Given;
}

/** Every piece that is over a limit, not the worst of each member alone. */
export function accessProblems(model: Model): readonly AccessProblem[] {
    const { access } = model;
    const stages = broughtIn(model);
    return piecesOf(model).filter(({ member }) => stages.has(member)).flatMap(piece => [
        ...over('piece', piece, piece.length, access?.piece),
        ...over('carry', piece, piece.mass, access?.carry)
    ]);
}

function over(limit: AccessProblem['limit'], piece: Piece, value: number | undefined, given: Given | undefined): AccessProblem[] {
    return given && value !== undefined && value > given.value ? [{ piece, limit, value, most: given.value, given }] : [];
}
