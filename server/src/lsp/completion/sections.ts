/** Sizes to choose from, and what each would be used: worked out when one is looked at, by computing the whole calculation with it. */
import { UriUtils, URI } from 'langium';
import type { LangiumSharedServices } from 'langium/lsp';
import { CompletionItemKind, type CompletionItem } from 'vscode-languageserver';
import { sawnSizes } from '../../catalog/tables/sawn-sizes.js';
import { compute } from '../../compute.js';
import { memberSummaries } from '../../summary.js';
import type { IncludedFiles } from '../included-files.js';
import { hintLabel } from '../inlay-hints.js';
import { checksTable } from '../markdown.js';
import { rolled, rolledNames } from '../meaning/classes.js';

export const timberSizes: readonly string[] = sawnSizes.map(({ breadth, depth }) => `${breadth} x ${depth} mm`);

/** What has to be known to try a size. */
export interface SectionData {
    readonly section: string;
    readonly uri: string;
    readonly member: string;
    /** Of the text that it replaces. */
    readonly start: number;
    readonly end: number;
}

type SectionItem = Pick<CompletionItem, 'label' | 'kind' | 'sortText' | 'data' | 'detail'>;

export function sectionItems(material: 'timber' | 'steel', at: Omit<SectionData, 'section'>): readonly SectionItem[] {
    const names = material === 'steel' ? rolledNames : timberSizes;
    return names.map((section, index) => ({
        label: section, kind: CompletionItemKind.Value, sortText: `0${String(index).padStart(3, '0')}`, data: { ...at, section } satisfies SectionData
    }));
}

export class SectionTrial {
    constructor(private readonly shared: LangiumSharedServices, private readonly included: IncludedFiles) { }

    async resolve(item: CompletionItem): Promise<CompletionItem> {
        const data = item.data as SectionData | undefined;
        const text = data && this.shared.workspace.TextDocuments.get(data.uri)?.getText();
        if (!data || text === undefined) {
            return item;
        }
        const uri = URI.parse(data.uri);
        const tried = this.shared.workspace.LangiumDocumentFactory.fromString(text.slice(0, data.start) + data.section + text.slice(data.end), uri);
        const { evaluation } = await this.included.evaluate(tried, UriUtils.basename(uri));
        const member = memberSummaries(compute(evaluation)).find(({ name }) => name === data.member);
        return {
            ...item,
            detail: member && hintLabel(member),
            documentation: { kind: 'markdown', value: [member && checksTable(member), rolled(data.section)].filter(Boolean).join('\n\n') }
        };
    }
}
