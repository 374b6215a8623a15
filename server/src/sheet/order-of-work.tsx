/** The stages as a list to work down: what is done, in which order. */
import type { StageResult } from '../results.js';
import { Block, Line, useLineOf } from './parts.js';
import { prose } from './prose.js';

export function OrderOfWork({ stages }: { readonly stages: readonly StageResult[] }) {
    const lineOf = useLineOf();
    return stages.length === 0 ? null : (
        <Block id="stages" title="Order of work">
            <p class="small">Each stage is checked with the loads that it has. What is added is free of stress on the shape that is there by then.</p>
            <ol class="stages">
                {stages.map(({ name, title, lines, source }) => (
                    <li data-line={lineOf(source)}>
                        <b class="name">{name}</b>{title && <span class="title">: {title}</span>} <Line source={source} />
                        <ul>{lines.map(line => <li>{prose(line)}</li>)}</ul>
                    </li>
                ))}
            </ol>
        </Block>
    );
}
