import { CstUtils, type LangiumDocument } from 'langium';
import type { HoverProvider } from 'langium/lsp';
import type { Hover, HoverParams } from 'vscode-languageserver';
import type { ComputedDocuments } from '../computed-documents.js';
import type { DisplaySetting } from '../display-setting.js';
import type { WorkspaceNames } from '../names/workspace-names.js';
import { hoverAsked } from './asked.js';
import { hoverCheck } from './check.js';
import { hoverInput } from './input.js';
import { hoverMember } from './member.js';
import type { Hovered, HoverOf, Place } from './place.js';
import { hoverQuantity, hoverUnit } from './quantity.js';
import { hoverDeclared } from './declared.js';
import { hoverClass, hoverKeyword } from './word.js';

/** The first that knows the place tells of it. */
const kinds: readonly HoverOf[] = [hoverCheck, hoverMember, hoverAsked, hoverClass, hoverUnit, hoverInput, hoverQuantity];

export class ResultHovers implements HoverProvider {
    constructor(private readonly computed: ComputedDocuments, private readonly names: WorkspaceNames, private readonly display: DisplaySetting) { }

    async getHoverContent(document: LangiumDocument, { position }: HoverParams): Promise<Hover | undefined> {
        const computed = this.computed.get(document.uri);
        const root = document.parseResult.value.$cstNode;
        if (!computed || !root) {
            return undefined;
        }
        const offset = computed.text.offsetAt(position);
        const leaf = CstUtils.findLeafNodeAtOffset(root, offset);
        const word = leaf && !leaf.hidden ? leaf : undefined;
        const place = { computed, offset, word };
        const hovered = this.display.shown(() => firstOf(kinds, place)) ?? await hoverDeclared(this.names, document, offset, computed.results) ?? hoverKeyword(place);
        return hovered && {
            contents: { kind: 'markdown', value: hovered.markdown },
            range: { start: computed.text.positionAt(hovered.source.start), end: computed.text.positionAt(hovered.source.end) }
        };
    }
}

function firstOf(kinds: readonly HoverOf[], place: Place): Hovered | undefined {
    for (const hoverOf of kinds) {
        const hovered = hoverOf(place);
        if (hovered) {
            return hovered;
        }
    }
    return undefined;
}
