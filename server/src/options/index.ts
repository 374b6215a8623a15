/** Ways to do it side by side: what is drawn, then every option, each a whole calculation. */
import type { Model, SourceRef } from '../../../language/src/model.js';
import { broughtIn } from '../pieces/brought-in.js';
import { partsOf, total } from '../pieces/parts.js';
import { piecesOf, type Piece } from '../pieces/pieces.js';
import type { CheckResult, Hazard, MemberResult, OptionResult, Results } from '../results.js';

/** What an option's row is made from. */
export type Outcome = Pick<Results, 'verdict' | 'verdictReason' | 'checks' | 'members' | 'hazards'>;

/** The option that is computed next. */
export interface OptionProgress { readonly name: string; readonly done: number; readonly of: number }

/**
 * Empty where the file has no option. The language has each option's model, evaluated as if the file said so. Yields before each.
 * @param drawn what was computed of the model as it is
 * @param compute the whole calculation of a model
 */
export function* optionSteps(model: Model, drawn: Outcome, compute: (model: Model) => Outcome): Generator<OptionProgress, readonly OptionResult[]> {
    const { options } = model;
    const rows: OptionResult[] = options.length === 0 ? [] : [rowOf(model, drawn, { name: null, source: model.job.source })];
    for (const [done, option] of options.entries()) {
        yield { name: option.name, done, of: options.length };
        rows.push(rowOf(option.model, compute(option.model), option));
    }
    return rows;
}

interface Named { readonly name: string | null; readonly title?: string; readonly source: SourceRef }

function rowOf(model: Model, { verdict, verdictReason, checks, members, hazards }: Outcome, { name, title, source }: Named): OptionResult {
    const carried = broughtIn(model);
    const pieces = piecesOf(model).filter(({ member }) => carried.has(member));
    const isCarried = (one: { readonly name: string }): boolean => carried.has(one.name);
    return {
        name, ...title !== undefined && { title }, verdict, verdictReason, source,
        ...worstOf(checks), ...deflectionOf(members), ...massesOf(pieces), ...longestOf(pieces),
        parts: total(partsOf(pieces.length, model.members.filter(isCarried), model.hangers.filter(isCarried))),
        hazards: countOf(hazards),
        checks: checks.map(check => ({ ...check, option: name }))
    };
}

function worstOf(checks: readonly CheckResult[]): Pick<OptionResult, 'worst'> {
    const worst = greatest(checks, ({ utilisation }) => utilisation);
    return worst ? { worst: { id: worst.id, utilisation: worst.utilisation } } : {};
}

/** Over all stages. */
function deflectionOf(members: readonly MemberResult[]): Pick<OptionResult, 'deflection'> {
    const worst = greatest(members, ({ deflection }) => 1 / deflection.ratio);
    return worst ? { deflection: { member: worst.name, final: worst.deflection.final, ratio: worst.deflection.ratio } } : {};
}

/** Where one mass is not known neither their sum nor the heaviest is. */
function massesOf(pieces: readonly Piece[]): Pick<OptionResult, 'mass' | 'heaviestPiece'> {
    const known = pieces.flatMap(({ mark, mass }) => mass === undefined ? [] : [{ mark, mass }]);
    const heaviest = greatest(known, ({ mass }) => mass);
    return heaviest && known.length === pieces.length ? {
        mass: { value: known.reduce((sum, { mass }) => sum + mass, 0), unit: 'kg' },
        heaviestPiece: { mark: heaviest.mark, mass: { value: heaviest.mass, unit: 'kg' } }
    } : {};
}

function longestOf(pieces: readonly Piece[]): Pick<OptionResult, 'longestPiece'> {
    const longest = greatest(pieces, ({ length }) => length);
    return longest ? { longestPiece: { mark: longest.mark, length: { value: longest.length / 1000, unit: 'm' } } } : {};
}

function countOf(hazards: readonly Hazard[]): OptionResult['hazards'] {
    const of = (severity: Hazard['severity']): number => hazards.filter(hazard => hazard.severity === severity && hazard.answer === undefined).length;
    return { stop: of('stop'), warn: of('warn'), note: of('note') };
}

/** The first of them; what is no number counts as the greatest, so that it is seen. */
function greatest<T>(items: readonly T[], of: (item: T) => number): T | undefined {
    const ranked = (item: T): number => Number.isNaN(of(item)) ? Infinity : of(item);
    return items.reduce<T | undefined>((most, item) => most !== undefined && ranked(most) >= ranked(item) ? most : item, undefined);
}
