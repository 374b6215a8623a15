/** What an editor builds on: names lead to what they name, in this file and the included ones alone. */
import { AstUtils, EmptyFileSystem, URI } from 'langium';
import type { LangiumDocument, Reference } from 'langium';
import { beforeAll, describe, expect, it } from 'vitest';
import { createPadstoneServices, evaluate, evaluateText } from '../../language/src/index.js';
import { hangers, sailLoft, soundJob } from './check.js';

const { shared, padstone } = createPadstoneServices(EmptyFileSystem);
let loft: LangiumDocument;

function open(path: string, text: string): LangiumDocument {
    const document = shared.workspace.LangiumDocumentFactory.fromString(text, URI.file(path));
    shared.workspace.LangiumDocuments.addDocument(document);
    return document;
}

const references = (document: LangiumDocument): readonly Reference[] =>
    AstUtils.streamAst(document.parseResult.value).flatMap(node => AstUtils.streamReferences(node)).map(({ reference }) => reference as Reference).toArray();

beforeAll(async () => {
    loft = open('/job/sail-loft.padstone', sailLoft);
    const all = [loft, open('/job/details/hangers.padstone', hangers), open('/other/stray.padstone', `${soundJob}load x permanent 1 kN/m on T2\n`)];
    await shared.workspace.DocumentBuilder.build(all);
});

describe('references', () => {
    it('lead to their declarations, a detail to the included file', () => {
        const targets = new Map(references(loft).map(reference => [reference.$refText, reference.ref]));
        expect(targets.get('north')).toMatchObject({ $type: 'Wall', name: 'north' });
        expect(targets.get('T2')).toMatchObject({ $type: 'Member', name: 'T2' });
        expect(AstUtils.getDocument(targets.get('twinRodHanger')!).uri.path).toBe('/job/details/hangers.padstone');
    });

    it('lead to nothing in a file that is not included', () => {
        const stray = shared.workspace.LangiumDocuments.getDocument(URI.file('/other/stray.padstone'))!;
        expect(references(stray).find(reference => reference.$refText === 'T2')!.ref).toBeUndefined();
        expect(references(stray).find(reference => reference.$refText === 'J1')!.ref).toMatchObject({ name: 'J1' });
    });

    it('of a parameter stay in their detail', () => {
        const library = shared.workspace.LangiumDocuments.getDocument(URI.file('/job/details/hangers.padstone'))!;
        expect(references(library).filter(reference => reference.$refText === 'at').map(reference => reference.ref?.$type)).toEqual(['Parameter', 'Parameter']);
    });

    it('in a detail lead to its own values, and to other details', async () => {
        const text = 'detail one (old: member, at: length) {\n  hanger carries old at at from old at 2 m { rods 1 M12 }\n}\ndetail two (old: member) {\n  let half = 1 m\n  use one left (old: old, at: half)\n}\n';
        const document = open('/job/details/two.padstone', text);
        await shared.workspace.DocumentBuilder.build([document]);
        expect(references(document).filter(reference => reference.error !== undefined).map(reference => reference.$refText)).toEqual([]);
        expect(references(document).find(reference => reference.$refText === 'half')!.ref).toMatchObject({ $type: 'Let' });
    });

    it('go to the definition over the protocol', async () => {
        const position = loft.textDocument.positionAt(sailLoft.indexOf('on north') + 4);
        const links = await padstone.lsp.DefinitionProvider!.getDefinition(loft, { textDocument: { uri: loft.uri.toString() }, position });
        expect(links![0]!.targetSelectionRange.start.line).toBe(sailLoft.slice(0, sailLoft.indexOf('wall north')).split('\n').length - 1);
    });
});

describe('evaluation', () => {
    it('is one and the same for a text and for a document of the editor', () => {
        const { model, findings } = evaluate(loft, { file: 'sail-loft.padstone' });
        expect({ model, findings }).toEqual({ model: evaluateText(sailLoft, 'sail-loft.padstone').model, findings: [] });
    });

    it('reads included documents as it reads included texts', () => {
        const include = (path: string) => (path === 'details/hangers.padstone' ? shared.workspace.LangiumDocuments.getDocument(URI.file('/job/details/hangers.padstone')) : undefined);
        const inEditor = evaluate(loft, { file: 'sail-loft.padstone', include });
        expect(inEditor).toEqual(evaluateText(sailLoft, 'sail-loft.padstone', file => (file === 'details/hangers.padstone' ? hangers : undefined)));
        expect(inEditor.model.hangers).toHaveLength(2);
    });

    it('calls a document by its address unless told otherwise', () => expect(evaluate(loft).model.file).toBe('file:///job/sail-loft.padstone'));

    it('takes services of the server before its own', () => {
        const hover = { getHoverContent: () => undefined };
        expect(createPadstoneServices(EmptyFileSystem, { lsp: { HoverProvider: () => hover } }).padstone.lsp.HoverProvider).toBe(hover);
    });
});
