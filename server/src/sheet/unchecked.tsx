import type { Unchecked as Item } from '../results.js';
import { sentence } from './head.js';
import { Block, Line, useLineOf } from './parts.js';

/** What was not checked, what stands in the way of a verdict first. */
export function Unchecked({ items }: { readonly items: readonly Item[] }) {
    const blocking = items.filter(item => item.blocking);
    const beyond = items.filter(item => !item.blocking);
    return (
        <Block id="unchecked" title="What was not checked">
            {items.length === 0 && <p>This calculation names nothing that it leaves out. It is still no more than the checks that it lists.</p>}
            {blocking.length > 0 && (
                <>
                    <p><b>Because of these there is no verdict of pass:</b></p>
                    <ul class="blocking">{blocking.map(item => <Entry item={item} />)}</ul>
                </>
            )}
            {beyond.length > 0 && (
                <>
                    <p>Beyond this calculation:</p>
                    <ul>{beyond.map(item => <Entry item={item} />)}</ul>
                </>
            )}
        </Block>
    );
}

function Entry({ item: { text, source } }: { readonly item: Item }) {
    const lineOf = useLineOf();
    return <li data-line={lineOf(source)}>{sentence(text)} {source && <Line source={source} />}</li>;
}
