import { Block } from './parts.js';

/** Usual cautions for work on loaded timber: common practice, no source. */
const cautions = [
    'Local codes and a licensed structural engineer decide. This sheet is a help to them and to whoever builds, and takes the place of neither.',
    'Prop before cutting, drilling or taking anything away; carry the props down to something that was itself checked.',
    'Nobody stands or works under a beam while it is jacked or under a proof load; add load in steps, with a prop that would catch it.',
    'Find and isolate services (electricity, gas, water) before drilling or cutting.',
    'Have old paint, boards, felt and pipe lagging tested for lead and asbestos before disturbing them.',
    'Stop and have it looked at again when what is opened up is not what was assumed here: another section, more decay, other fixings.'
];

export function Cautions() {
    return <Block id="cautions" title="Cautions"><ul>{cautions.map(text => <li>{text}</li>)}</ul></Block>;
}

export function Signature() {
    return (
        <Block id="signature" title="Reviewed by">
            <dl class="signature">
                {['Name', 'Qualification and licence', 'Date', 'Signature'].map(text => <div><dt>{text}</dt><dd /></div>)}
            </dl>
        </Block>
    );
}
