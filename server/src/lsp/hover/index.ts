import { CstUtils, type LangiumDocument } from 'langium';
import type { HoverProvider } from 'langium/lsp';
import type { Hover, HoverParams } from 'vscode-languageserver';
import type { ComputedDocuments } from '../computed-documents.js';
import { hoverCheck } from './check.js';
import { hoverInput } from './input.js';
import { hoverMember } from './member.js';
import type { HoverOf } from './place.js';
import { hoverQuantity } from './quantity.js';
import { hoverStrengthClass } from './strength-class.js';

/** The first that knows the place tells of it. */
const kinds: readonly HoverOf[] = [hoverCheck, hoverMember, hoverStrengthClass, hoverInput, hoverQuantity];

export class ResultHovers implements HoverProvider {
    constructor(private readonly computed: ComputedDocuments) { }

    getHoverContent(document: LangiumDocument, { position }: HoverParams): Hover | undefined {
        const computed = this.computed.get(document.uri);
        const root = document.parseResult.value.$cstNode;
        if (!computed || !root) {
            return undefined;
        }
        const offset = computed.text.offsetAt(position);
        const leaf = CstUtils.findLeafNodeAtOffset(root, offset);
        const word = leaf && !leaf.hidden ? leaf : undefined;
        for (const hoverOf of kinds) {
            const hovered = hoverOf({ computed, offset, word });
            if (hovered) {
                const { start, end } = hovered.source;
                return {
                    contents: { kind: 'markdown', value: hovered.markdown },
                    range: { start: computed.text.positionAt(start), end: computed.text.positionAt(end) }
                };
            }
        }
        return undefined;
    }
}
