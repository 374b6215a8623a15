import type { Hazard } from '../results.js';
import { evidenceInWords } from '../summary.js';
import { anchor } from './ids.js';
import { sentence } from './head.js';
import { Block, Line, useLineOf } from './parts.js';

const severities: Readonly<Record<Hazard['severity'], string>> = { stop: 'STOP', warn: 'Warning', note: 'Note' };

/** The worst first, each with what to do, who decides, and where it comes from. */
export function Hazards({ hazards }: { readonly hazards: readonly Hazard[] }) {
    const lineOf = useLineOf();
    return (
        <Block id="hazards" title="Hazards">
            {hazards.length === 0
                ? <p>None of the hazard rules found anything in what this file says. That is no survey of the building.</p>
                : <ol class="hazards">
                    {hazards.map(hazard => (
                        <li class={hazard.answer ? `${hazard.severity} answered` : hazard.severity} id={anchor('hazard', hazard.code, hazard.subject, String(hazards.indexOf(hazard)))} data-line={lineOf(hazard.source)}>
                            <p><b class="severity">{severities[hazard.severity]}</b> {sentence(hazard.message)} <Line source={hazard.source} /></p>
                            <p class="action">{sentence(hazard.action)} <span class="small">Decides: {hazard.decider}.</span></p>
                            {hazard.answer && <p class="answer" data-line={lineOf(hazard.answer.source)}>
                                <b>Answered:</b> {sentence(hazard.answer.what)} <span class="small">{evidenceInWords(hazard.answer.evidence)}.</span> <Line source={hazard.answer.source} />
                            </p>}
                        </li>
                    ))}
                </ol>}
        </Block>
    );
}
