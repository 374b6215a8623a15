/** The name of a proof load: what it predicts and proves; of an option: how it compares. */
import * as ast from '../../../../language/src/generated/ast.js';
import type { LoadTestResult, OptionResult } from '../../results.js';
import { amount, deflection, percentUp } from '../../sheet/numbers.js';
import { hazardCount, optionName } from '../../summary.js';
import { escape } from '../markdown.js';
import { sourceOf, type HoverOf } from './place.js';

export const hoverAsked: HoverOf = ({ computed: { results }, word }) => {
    const node = word?.astNode;
    const test = ast.isLoadTest(node) ? results.loadTests?.find(({ name }) => name === node.name) : undefined;
    const option = ast.isOption(node) ? results.options?.find(({ name }) => name === node.name) : undefined;
    const isName = (ast.isLoadTest(node) || ast.isOption(node)) && word?.text === node.name;
    const markdown = !isName ? undefined : test ? testMarkdown(test) : option ? optionMarkdown(option) : undefined;
    return word && markdown !== undefined ? { markdown, source: sourceOf(word) } : undefined;
};

function testMarkdown({ name, verdict, points, E, EScatter }: LoadTestResult): string {
    const rows = points.map(({ weight, predicted, low, high, read }) =>
        `| ${[amount(weight), deflection(predicted.value), `${deflection(low.value)} to ${deflection(high.value)}`, read ? deflection(read.value) : ''].join(' | ')} |`);
    return [
        `**${escape(name)}** ${escape(verdict)}`,
        rows.length > 0 ? ['| weight | predicted | band | read |', '|--:|--:|--:|--:|', ...rows].join('\n') : '',
        E ? escape(`E from the readings: ${amount(E)}${EScatter ? ` ± ${amount(EScatter)}` : ''}`) : ''
    ].filter(part => part !== '').join('\n\n');
}

function optionMarkdown(option: OptionResult): string {
    const { verdict, verdictReason, worst, deflection: bent, mass, heaviestPiece, hazards } = option;
    return [
        `**${escape(optionName(option))}** ${verdict}: ${escape(verdictReason)}`,
        worst ? escape(`Worst check ${worst.id} ${percentUp(worst.utilisation)}`) : 'Nothing was checked.',
        escape([
            bent && `final deflection ${deflection(bent.final.value)} of ${bent.member}`, mass && `mass ${amount(mass)}`,
            heaviestPiece && `heaviest piece ${heaviestPiece.mark} ${amount(heaviestPiece.mass)}`, `hazards: ${hazardCount(hazards)}`
        ].filter(Boolean).join(', '))
    ].join('\n\n');
}
