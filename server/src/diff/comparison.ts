/** Two revisions of one calculation set against each other: plain readonly data that every view reads. */
import type { Model } from '../../../language/src/model.js';
import type { Results, Verdict } from '../results.js';
import { changedInputs } from './inputs.js';
import { changedChecks, changedHazards, changedPieces, changedUnchecked } from './outcomes.js';

/** One calculation as it was or is. */
export interface Side {
    readonly results: Results;
    /** Undefined where the file could not be read. */
    readonly model?: Model;
}

/** `before` is undefined of what comes, `after` of what goes. */
export interface Change<T> {
    readonly before?: T;
    readonly after?: T;
}

/** One thing that went in otherwise: an input, how it is known, a part of an element. */
export interface InputChange extends Change<string> {
    /** Within the element: `section depth`, `north bearing`. Empty where the element itself comes or goes. */
    readonly what: string;
}

export interface ElementChange {
    /** `member T2`, `load storage`, `option steel: R1`. */
    readonly element: string;
    readonly changes: readonly InputChange[];
}

export interface CheckChange extends Change<{ readonly utilisation: number; readonly pass: boolean }> {
    /** `T2.bending`. */
    readonly id: string;
    /** The stage and the option, where there are such. */
    readonly stage: string | null;
    readonly option: string | null;
}

export interface HazardChange extends Change<{ readonly severity: 'stop' | 'warn' | 'note'; readonly message: string; readonly answered: boolean }> {
    readonly code: string;
    readonly subject: string;
}

/** A piece to buy. */
export interface PieceChange extends Change<{ readonly description: string; /** mm. */ readonly length: number; /** kg. */ readonly mass?: number }> {
    readonly mark: string;
}

export interface Comparison {
    /** As the newer side calls it, else as the older does. */
    readonly file: string;
    readonly title: string;
    /** Whether the file comes, goes, or is on both sides. */
    readonly presence: 'both' | 'added' | 'removed';
    readonly revision: Change<string>;
    readonly inputs: readonly ElementChange[];
    readonly verdict: Change<{ readonly verdict: Verdict; readonly reason: string; readonly understood: boolean }>;
    /** What fails now first, then by how much it has changed. */
    readonly checks: readonly CheckChange[];
    readonly hazards: readonly HazardChange[];
    readonly unchecked: readonly Change<string>[];
    readonly pieces: readonly PieceChange[];
    /** Errors of the text, as `before: line 12: …`. */
    readonly errors: Change<readonly string[]>;
}

/** At least one side is there. */
export function compareSides(before: Side | undefined, after: Side | undefined): Comparison {
    const newest = (after ?? before)!.results;
    return {
        file: newest.file,
        title: newest.job?.title || 'Untitled job',
        presence: before === undefined ? 'added' : after === undefined ? 'removed' : 'both',
        revision: { before: before?.results.job?.revision?.mark, after: after?.results.job?.revision?.mark },
        inputs: changedInputs(before?.model, after?.model),
        verdict: { before: verdictOf(before), after: verdictOf(after) },
        checks: changedChecks(before?.results.checks ?? [], after?.results.checks ?? []),
        hazards: changedHazards(before?.results.hazards ?? [], after?.results.hazards ?? []),
        unchecked: changedUnchecked(before?.results.unchecked ?? [], after?.results.unchecked ?? []),
        pieces: changedPieces(before?.model, after?.model),
        errors: { before: before && errorsOf(before.results), after: after && errorsOf(after.results) }
    };
}

const verdictOf = (side: Side | undefined): Comparison['verdict']['before'] => side && { verdict: side.results.verdict, reason: side.results.verdictReason, understood: side.results.understood };

/** Failing checks and requirements are told as such. */
const errorsOf = ({ findings, understood }: Results): readonly string[] => understood ? []
    : findings.filter(({ severity, code }) => severity === 'error' && code !== 'check-fails' && code !== 'requirement-fails').map(({ source, message }) => `${source.file}:${source.line}: ${message}`);

/** Whether anything of it is worth a reader's time. */
export function isChanged({ presence, inputs, verdict, checks, hazards, unchecked, pieces, errors }: Comparison): boolean {
    return presence !== 'both' || verdict.before!.verdict !== verdict.after!.verdict || verdict.before!.understood !== verdict.after!.understood
        || [inputs, checks, hazards, unchecked, pieces].some(changes => changes.length > 0)
        || errors.before!.join('\n') !== errors.after!.join('\n');
}
