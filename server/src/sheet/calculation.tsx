/** One check as a block: what governs, each formula with its numbers, and where the numbers come from. */
import type { ComponentChildren } from 'preact';
import { useContext } from 'preact/hooks';
import type { Given, SourceRef } from '../../../language/src/model.js';
import type { CheckResult, Results, Step, Term } from '../results.js';
import { checkAnchor, inputAnchor, stepAnchor, termAnchor } from './ids.js';
import { Formula, Tex } from './math/mathml.js';
import { substitute } from './math/substitute.js';
import { isElsewhere, originOfSymbol } from './math/origins.js';
import { parseTex, printTex, type Row } from './math/tex.js';
import { Modes, modesOf } from './modes.js';
import { against, amount, inCalculation, inFormula, percentUp, ratioUp, station } from './numbers.js';
import { outcomeOf } from './outcome.js';
import { Line, OutcomeMark, ViewContext, useLineOf } from './parts.js';
import { isUtilisation, proseToText } from './plain-math.js';
import { combinationLabel, prose } from './prose.js';

interface Props {
    readonly check: CheckResult;
    readonly ledger: Results['ledger'];
    readonly children?: ComponentChildren;
}

export function Calculation({ check, ledger, children }: Props) {
    const lineOf = useLineOf();
    const { folded } = useContext(ViewContext);
    const inputs = inputsOf(check.steps);
    /** An earlier line, else the input itself where the inputs are listed, else the number's own line below. */
    const originOf = (term: Term, line: number): string => {
        const earlier = workedOutBefore(check.steps, term, line);
        const input = folded ? undefined : inputAt(term.source, ledger);
        return earlier !== undefined ? stepAnchor(check, earlier) : input ? inputAnchor(input.path) : termAnchor(check, inputs.findIndex(other => isSame(other, term)));
    };
    const lines = check.steps.map((step, i) => (
        <>
            <StepLine step={step} id={stepAnchor(check, i)} hrefOf={term => `#${originOf(term, i)}`} />
            <Modes modes={modesOf(step, check.steps.slice(0, i))} of={`${check.id}, line ${i + 1}`} />
        </>
    ));
    return (
        <details class="calculation" id={checkAnchor(check)} open={!folded} data-line={lineOf(check.source)}>
            <summary>
                <b>{check.id}</b> <b class="number">{percentUp(check.utilisation)}</b> <OutcomeMark outcome={outcomeOf(check)} /> <span class="small">{check.stage !== null && <>stage {check.stage}, </>}{check.clause}</span>
            </summary>
            <div class="worked" tabIndex={0} role="group" aria-label={`Calculation of ${check.id}`}>
                <div class="begin">
                    <p class="governs">
                        {against(check.demand, check.capacity)}, at {station(check.at.value * 1000)}, governed by <b>{combinationLabel(check.combination)}</b>{check.duration && ` (${check.duration})`} <Line source={check.source} />
                    </p>
                    {check.corner && <p class="small">{prose(check.corner.sentence)}</p>}
                    {lines[0]}
                </div>
                {lines.slice(1)}
                <Where check={check} terms={inputs} ledger={ledger} />
            </div>
            {children}
        </details>
    );
}

interface StepProps {
    readonly step: Step;
    readonly id: string;
    readonly hrefOf: (term: Term) => string;
}

function StepLine({ step, id, hrefOf }: StepProps) {
    const formula = parseTex(step.formula);
    const numbers = substitute(formula, step.terms, hrefOf);
    const result: Row = [isUtilisation(step) ? { kind: 'number', text: ratioUp(step.result.value) } : { kind: 'value', amount: step.result }];
    const all = [formula, numbers, result];
    const prints = all.map(printed);
    const rows = all.filter((row, i) => row.length > 0 && prints[i] !== (prints[i - 1] ?? ''));
    return (
        <div class={prints.slice(0, 2).some(isLong) ? 'step long' : 'step'} id={id}>
            <div class="formula">
                <Formula row={[...parseTex(step.symbol), { kind: 'operator', tex: '=' }, ...rows[0] ?? []]} />
                {rows.slice(1).map(row => <Formula row={row} equals />)}
                {inFormula(step.result) !== amount(step.result) && <span class="math"> ({amount(step.result)})</span>}
            </div>
            {(step.clause || step.note) && <p class="small">{[step.clause, step.note && proseToText(step.note)].filter(Boolean).join(' · ')}</p>}
        </div>
    );
}

/** Wider than the column of formulas: its reference then stands below it. */
const isLong = (tex: string): boolean => tex.replace(/\\[a-zA-Z]+/g, 'x').length > 60;

const printed = (row: Row): string => printTex(row, given => inFormula(given));

/** Terms that no earlier line has worked out, each once. */
function inputsOf(steps: readonly Step[]): readonly Term[] {
    const inputs = steps.flatMap((step, i) => step.terms.filter(term => workedOutBefore(steps, term, i) === undefined));
    return inputs.filter((term, i) => inputs.findIndex(other => isSame(other, term)) === i);
}

/** A symbol may stand for the whole depth in one line and for what is left of it in another. */
function isSame(one: Term, other: Term): boolean {
    return one.symbol === other.symbol && one.amount.value === other.amount.value && one.amount.unit === other.amount.unit;
}

/** The number of the last line before this one whose result the term is. */
function workedOutBefore(steps: readonly Step[], { symbol }: Term, line: number): number | undefined {
    const found = steps.slice(0, line).findLastIndex(step => step.symbol === symbol);
    return found < 0 ? undefined : found;
}

interface WhereProps {
    readonly check: CheckResult;
    readonly terms: readonly Term[];
    readonly ledger: Results['ledger'];
}

/** Every number that the calculation starts from, each with where it comes from. */
function Where({ check, terms, ledger }: WhereProps) {
    return terms.length === 0 ? null : (
        <dl class="where">
            {terms.map(({ symbol, amount: given, meaning, source }, i) => (
                <div id={termAnchor(check, i)}>
                    <dt><Tex tex={symbol} /></dt>
                    <dd>{inCalculation(given)}{meaning && <>, {prose(meaning)}</>}{source ? <> <Origin source={source} ledger={ledger} /></> : <Elsewhere of={check.subject} symbol={symbol} named={meaning !== undefined} />}</dd>
                </div>
            ))}
        </dl>
    );
}

/** Of what is no input: which part of the sheet it is from; nothing where the meaning says so already. */
function Elsewhere({ of, symbol, named }: { readonly of: string; readonly symbol: string; readonly named: boolean }) {
    const { folded, subjects } = useContext(ViewContext);
    const { words, place } = originOfSymbol(symbol);
    const id = place === 'subject' ? subjects?.get(of) : folded ? undefined : 'loads';
    return named && !isElsewhere(symbol) ? null : <>, {id === undefined ? words : <a href={`#${id}`}>{words}</a>}</>;
}

/** A link to the input in the ledger where it is one. */
function Origin({ source, ledger }: { readonly source: SourceRef; readonly ledger: Results['ledger'] }) {
    const { folded } = useContext(ViewContext);
    const input = inputAt(source, ledger);
    return input && !folded ? <a href={`#${inputAnchor(input.path)}`}>{input.path}</a> : <Line source={source} />;
}

function inputAt(source: SourceRef | undefined, ledger: Results['ledger']): Given<number | string> | undefined {
    return source && ledger.find(given => given.source.file === source.file && given.source.start <= source.start && source.end <= given.source.end);
}
