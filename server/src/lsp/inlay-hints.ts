import type { LangiumDocument } from 'langium';
import type { InlayHintProvider } from 'langium/lsp';
import type { InlayHint, InlayHintParams, Position, Range } from 'vscode-languageserver';
import { memberSummaries, type MemberSummary } from '../summary.js';
import { percentUp } from '../sheet/numbers.js';
import { openSheetCommand } from '../protocol.js';
import type { DisplaySetting } from './display-setting.js';
import type { EditorCommands } from './editor-commands.js';
import type { Computed, ComputedDocuments } from './computed-documents.js';
import { limitHints } from './limit-hints.js';
import { checksTable } from './markdown.js';

/** `bending 83 % · 9.9 mm = L/475` after each member's name, the worst of all stages; `passes until 52 mm` after an input once that is known. */
export class ResultHints implements InlayHintProvider {
    constructor(private readonly computed: ComputedDocuments, private readonly commands: EditorCommands, private readonly display: DisplaySetting) { }

    getInlayHints(document: LangiumDocument, { range }: InlayHintParams): InlayHint[] {
        const computed = this.computed.get(document.uri);
        return computed ? this.display.shown(() => [...this.memberHints(computed), ...inputHints(computed)].filter(hint => contains(range, hint.position))) : [];
    }

    private memberHints({ results, text }: Computed): InlayHint[] {
        return memberSummaries(results).filter(({ source }) => source.file === results.file)
            .map(member => ({ position: text.positionAt(member.source.end), ...this.labelled(text.uri, member), paddingLeft: true }));
    }

    /** Where the editor can, the hint leads to the member's place in the sheet. */
    private labelled(uri: string, member: MemberSummary): Pick<InlayHint, 'label' | 'tooltip'> {
        const tooltip = { kind: 'markdown' as const, value: checksTable(member) };
        const command = { title: 'Open the sheet here', command: openSheetCommand, arguments: [uri, member.source.line] };
        return this.commands.has(openSheetCommand) ? { label: [{ value: hintLabel(member), tooltip, command }] } : { label: hintLabel(member), tooltip };
    }
}

function inputHints(computed: Computed): InlayHint[] {
    return limitHints(computed).map(({ offset, label, tooltip }) => (
        { position: computed.text.positionAt(offset), label, tooltip: { kind: 'markdown', value: tooltip }, paddingLeft: true, paddingRight: true }
    ));
}

export function hintLabel({ state, stage, checks, deflection, open }: MemberSummary): string {
    if (state === 'not computed') {
        return `not computed: ${open.join('; ')}`;
    }
    const [worst] = checks;
    const parts = [
        worst ? `${worst.check} ${percentUp(worst.utilisation)}${worst.pass ? '' : ' FAILS'}${stage === undefined ? '' : ` in ${stage}`}` : 'no checks',
        deflection,
        open.length > 0 ? 'incomplete' : undefined
    ];
    return parts.filter(part => part !== undefined).join(' · ');
}

function contains({ start, end }: Range, position: Position): boolean {
    return !before(position, start) && !before(end, position);
}

function before(a: Position, b: Position): boolean {
    return a.line < b.line || (a.line === b.line && a.character < b.character);
}
