/**
 * What the command prints for machines: the shape is published by `schema.ts` and stable under `format`.
 * Units: kN, kNm, m along a member, mm of deflection, MPa; utilisation is demand over capacity.
 */
import type { Amount, CheckResult, Corner, Hazard, LeafResult, MemberResult, Results, Verdict } from '../results.js';
import { amountOutput, finiteUse, type AmountOutput } from './amounts.js';
import { breakEvenOutputs, loadTestOutput, optionOutput, type BreakEvenOutput, type LoadTestOutput, type OptionOutput } from './asked.js';
import type { EvidenceWord, Severity } from '../../../language/src/model.js';

export const outputFormat = 1;

export interface Output {
    readonly format: typeof outputFormat;
    readonly files: readonly FileOutput[];
}

export interface FileOutput {
    readonly file: string;
    readonly job: { readonly title: string; readonly revision: string | null; readonly basis: string } | null;
    readonly verdict: Verdict;
    readonly diagnostics: readonly DiagnosticOutput[];
    readonly checks: readonly CheckOutput[];
    readonly members: readonly MemberOutput[];
    readonly breakeven: readonly BreakEvenOutput[];
    readonly loadtests: readonly LoadTestOutput[];
    readonly options: readonly OptionOutput[];
    readonly hazards: readonly HazardOutput[];
    readonly unchecked: readonly string[];
}

interface DiagnosticOutput {
    readonly severity: Severity;
    readonly code: string;
    readonly message: string;
    readonly line: number;
    readonly column: number;
}

interface CheckOutput {
    readonly id: string;
    readonly subject: string;
    readonly check: string;
    readonly stage: string | null;
    readonly option: string | null;
    readonly utilisation: number;
    readonly pass: boolean;
    readonly demand: AmountOutput;
    readonly capacity: AmountOutput;
    readonly combination: string;
    readonly duration: string;
    readonly at: AmountOutput;
    readonly clause: string;
    readonly line: number;
    readonly corner?: { readonly by: Corner['by']; readonly inputs: readonly { readonly input: string; readonly value: AmountOutput }[] };
}

interface RangeOutput {
    readonly min: AmountOutput;
    readonly max: AmountOutput;
}

interface MemberOutput {
    readonly name: string;
    readonly stage: string | null;
    readonly weight: AmountOutput;
    readonly reactions: readonly ({ readonly support: string; readonly at: AmountOutput } & RangeOutput)[];
    readonly moment: RangeOutput;
    readonly shear: RangeOutput;
    readonly deflection: DeflectionOutput;
    readonly leaves?: readonly LeafOutput[];
    readonly 'stiffness ratio'?: number;
}

interface DeflectionOutput {
    readonly instant: AmountOutput;
    readonly final: AmountOutput;
}

interface LeafOutput {
    readonly leaf: number;
    readonly moment: RangeOutput;
    readonly shear: RangeOutput;
    readonly deflection?: DeflectionOutput;
}

interface HazardOutput {
    readonly code: string;
    readonly severity: Hazard['severity'];
    readonly subject: string;
    readonly message: string;
    readonly line: number;
    /** What the file says was done about it. */
    readonly answer?: { readonly what: string; readonly evidence: EvidenceWord; readonly note?: string; readonly line: number };
}

export function toOutput(files: readonly Results[]): Output {
    return { format: outputFormat, files: files.map(fileOutput) };
}

function fileOutput(results: Results): FileOutput {
    const { job } = results;
    const others = (results.options ?? []).filter(({ name }) => name !== null);
    return {
        file: results.file,
        job: job?.title ? { title: job.title, revision: job.revision?.mark ?? null, basis: job.basis } : null,
        verdict: results.verdict,
        diagnostics: results.findings.map(({ severity, code, message, source }) => (
            { severity, code, message, line: source.line, column: source.column }
        )),
        checks: [...results.checks, ...others.flatMap(({ checks }) => checks)].map(checkOutput),
        members: results.members.map(memberOutput),
        breakeven: results.certainty ? breakEvenOutputs(results.certainty) : [],
        loadtests: (results.loadTests ?? []).map(loadTestOutput),
        options: (results.options ?? []).map(optionOutput),
        hazards: results.hazards.map(hazardOutput),
        unchecked: results.unchecked.map(item => item.text)
    };
}

function hazardOutput({ code, severity, subject, message, source, answer }: Hazard): HazardOutput {
    const answered = answer && { what: answer.what, evidence: answer.evidence.word, note: answer.evidence.note, line: answer.source.line };
    return { code, severity, subject, message, line: source.line, ...answered && { answer: answered } };
}

function checkOutput(check: CheckResult): CheckOutput {
    const finite = Number.isFinite(check.utilisation);
    return {
        id: check.id,
        subject: check.subject,
        check: check.check,
        stage: check.stage,
        option: check.option,
        utilisation: finiteUse(check.utilisation),
        pass: check.pass && finite,
        demand: amountOutput(check.demand),
        capacity: amountOutput(check.capacity),
        combination: check.combination,
        duration: check.duration,
        at: amountOutput(check.at),
        clause: check.clause,
        line: check.source.line,
        corner: check.corner && { by: check.corner.by, inputs: check.corner.at.map(({ path, value }) => ({ input: path, value: amountOutput(value) })) }
    };
}

function memberOutput(member: MemberResult): MemberOutput {
    return {
        name: member.name,
        stage: member.stage,
        weight: amountOutput(member.weight),
        reactions: member.reactions.map(({ support, at, ...range }) => ({ support, at: amountOutput(at), ...rangeOutput(range) })),
        moment: rangeOutput(member.moment),
        shear: rangeOutput(member.shear),
        deflection: deflectionOutput(member.deflection),
        leaves: member.leaves?.map(leafOutput),
        'stiffness ratio': member.stiffnessRatio !== undefined && Number.isFinite(member.stiffnessRatio) ? member.stiffnessRatio : undefined
    };
}

function leafOutput({ leaf, moment, shear, deflection }: LeafResult): LeafOutput {
    return { leaf, moment: rangeOutput(moment), shear: rangeOutput(shear), deflection: deflection && deflectionOutput(deflection) };
}

function deflectionOutput({ instant, final }: { readonly instant: Amount; readonly final: Amount }): DeflectionOutput {
    return { instant: amountOutput(instant), final: amountOutput(final) };
}

function rangeOutput({ min, max }: { readonly min: Amount; readonly max: Amount }): RangeOutput {
    return { min: amountOutput(min), max: amountOutput(max) };
}
