import assert from 'node:assert/strict';
import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import {
    commands, ConfigurationTarget, extensions, languages, lm, Position, Range, tasks, Uri, window, workspace, WorkspaceEdit,
    type CallHierarchyItem, type CodeAction, type CodeLens, type CompletionList, type Hover, type InlayHint, type LanguageModelTextPart, type ProcessExecution, type SymbolInformation, type TextDocument
} from 'vscode';

const folder = workspace.workspaceFolders![0]!.uri;
const at = (name: string): Uri => Uri.joinPath(folder, name);
const loft = at('sail-loft.padstone');

/** Until it is there; a failing last try tells what was missing. */
async function soon<Value>(read: () => Value | PromiseLike<Value>, enough: (value: Value) => boolean): Promise<Value> {
    for (const end = Date.now() + 20_000; ;) {
        const value = await read();
        if (enough(value) || Date.now() > end) {
            return value;
        }
        await new Promise(resolve => setTimeout(resolve, 100));
    }
}

async function opened(uri: Uri): Promise<TextDocument> {
    const document = await workspace.openTextDocument(uri);
    await window.showTextDocument(document);
    return document;
}

const positionOf = (document: TextDocument, needle: string, offset = 0): Position => {
    const index = document.getText().indexOf(needle);
    assert.ok(index >= 0, `${needle} stands in the text`);
    return document.positionAt(index + offset);
};
const whole = (document: TextDocument): Range => new Range(0, 0, document.lineCount, 0);
const hintsOf = async (document: TextDocument): Promise<string[]> => {
    const hints = await commands.executeCommand<InlayHint[]>('vscode.executeInlayHintProvider', document.uri, whole(document));
    return hints.map(({ label }) => typeof label === 'string' ? label : label.map(({ value }) => value).join(''));
};
const hoverAt = async (document: TextDocument, needle: string, offset = 0): Promise<string> => {
    const hovers = await commands.executeCommand<Hover[]>('vscode.executeHoverProvider', document.uri, positionOf(document, needle, offset));
    return hovers.flatMap(({ contents }) => contents.map(content => typeof content === 'string' ? content : content.value)).join('\n');
};
async function replace(document: TextDocument, before: string, after: string): Promise<void> {
    const edit = new WorkspaceEdit();
    const start = positionOf(document, before);
    edit.replace(document.uri, new Range(start, document.positionAt(document.offsetAt(start) + before.length)), after);
    await workspace.applyEdit(edit);
}

describe('Padstone in VS Code', () => {
    let document: TextDocument;
    before(async () => {
        document = await opened(loft);
        await soon(() => hintsOf(document), hints => hints.length > 0);
    });

    it('is the extension that is developed here', () => {
        assert.equal(extensions.getExtension('padstone.padstone')?.extensionPath, process.env['PADSTONE_SUITE_EXTENSION']);
    });

    it('shows a hint after each member', async () => {
        const hints = await hintsOf(document);
        assert.equal(hints.length, 2);
        assert.match(hints[0]!, /^[a-z]+ \d+ % .*· [\d.]+ mm = L\/\d+/);
    });

    it('tells what is wrong, with where more is written, here and in what is not open', async () => {
        const own = await soon(() => languages.getDiagnostics(loft), found => found.length > 0);
        const failing = own.find(({ code }) => typeof code === 'object' && code.value === 'check-fails');
        assert.ok(failing, 'a check fails');
        assert.match(String((failing.code as { target: Uri }).target), /padstone\.explain/);
        const other = await soon(() => languages.getDiagnostics(at('closed.padstone')), found => found.length > 0);
        assert.ok(other.some(({ message }) => message.includes('a unit is missing')), other.map(({ message }) => message).join('; '));
    });

    it('says what things are on hover', async () => {
        assert.match(await hoverAt(document, 'T2.bending', 4), /EN 1995-1-1[^]*σ_m,y,d/);
        assert.match(await hoverAt(document, 'twinRodHanger H1', 2), /detail twinRodHanger/);
        assert.match(await hoverAt(document, '3.2 kN', 5), /kilonewton/);
        assert.match(await hoverAt(document, 'restrained', 2), /Lateral restraint/);
    });

    it('offers sizes with the use that each would have', async () => {
        const position = positionOf(document, '190 x 240 mm');
        const list = await commands.executeCommand<CompletionList>('vscode.executeCompletionItemProvider', loft, position, undefined, 1);
        assert.equal(list.items[0]?.label, '38 x 100 mm');
        assert.match(list.items[0].detail ?? '', /\d+ % FAILS/);
    });

    it('renames over two files', async () => {
        const edit = await commands.executeCommand<WorkspaceEdit>('vscode.executeDocumentRenameProvider', loft, positionOf(document, 'twinRodHanger H1', 2), 'rodPair');
        assert.deepEqual(edit.entries().map(([uri]) => workspace.asRelativePath(uri)).sort(), ['details/hangers.padstone', 'sail-loft.padstone']);
        await workspace.applyEdit(edit);
        const library = await workspace.openTextDocument(at('details/hangers.padstone'));
        assert.match(library.getText(), /^detail rodPair /);
        assert.match(document.getText(), /use rodPair H1[^]*use rodPair H2/);
        const back = await commands.executeCommand<WorkspaceEdit>('vscode.executeDocumentRenameProvider', loft, positionOf(document, 'rodPair H1', 2), 'twinRodHanger');
        await workspace.applyEdit(back);
        assert.doesNotMatch(document.getText(), /rodPair/);
        await workspace.saveAll();
    });

    it('mends a missing unit', async () => {
        const broken = await opened(at('closed.padstone'));
        const [diagnostic] = await soon(() => languages.getDiagnostics(broken.uri).filter(({ message }) => message.includes('a unit is missing')), found => found.length > 0);
        const actions = await commands.executeCommand<CodeAction[]>('vscode.executeCodeActionProvider', broken.uri, diagnostic!.range, 'quickfix');
        const action = actions.find(({ title }) => title === 'add mm');
        assert.ok(action?.edit, actions.map(({ title }) => title).join(', '));
        await workspace.applyEdit(action.edit);
        assert.match(broken.getText(), /section 75 x 200 mm/);
        const left = await soon(() => languages.getDiagnostics(broken.uri).filter(({ message }) => message.includes('a unit is missing')), found => found.length === 0);
        assert.deepEqual(left, []);
    });

    it('sets the text right when it is saved', async () => {
        const settings = workspace.getConfiguration('editor', { languageId: 'padstone' });
        await settings.update('formatOnSave', true, ConfigurationTarget.Global, true);
        const messy = await opened(at('messy.padstone'));
        await replace(messy, '  of C24', '       of C24');
        await messy.save();
        await settings.update('formatOnSave', undefined, ConfigurationTarget.Global, true);
        assert.match(messy.getText(), /\n {2}of C24\n/);
    });

    it('finds names in every file of the folder', async () => {
        const symbols = await commands.executeCommand<SymbolInformation[]>('vscode.executeWorkspaceSymbolProvider', 'twinRodHanger');
        assert.ok(symbols.some(({ name, location }) => name === 'twinRodHanger' && location.uri.path.endsWith('hangers.padstone')));
        const [item] = await commands.executeCommand<CallHierarchyItem[]>('vscode.prepareCallHierarchy', loft, positionOf(document, 'twinRodHanger H1', 2));
        assert.equal(item!.name, 'twinRodHanger');
    });

    it('leads from lenses to the sheet', async () => {
        const lenses = await commands.executeCommand<CodeLens[]>('vscode.executeCodeLensProvider', loft, 10);
        assert.ok(lenses.some(({ command }) => command?.command === 'padstone.openPreview'));
    });

    it('has the command as a task, which fails where the calculation does', async () => {
        const found = await tasks.fetchTasks({ type: 'padstone' });
        const check = found.find(({ definition }) => definition['file'] === 'heavy.padstone');
        assert.ok(check, found.map(({ name }) => name).join(', '));
        // Not every host has a terminal: what one would be given is run.
        const { process: program, args, options } = check.execution as ProcessExecution;
        const { status, stdout } = spawnSync(program, args, { cwd: options!.cwd, env: { ...process.env, ...options!.env }, encoding: 'utf8' });
        assert.equal(status, 1);
        assert.match(stdout, /heavy\.padstone:\d+:\d+: error: B1\.bending/);
    });

    it('lets an assistant read results, and only those', async () => {
        const before = document.getText();
        const read = async (name: string, input: object): Promise<string> => {
            const { content } = await lm.invokeTool(name, { input, toolInvocationToken: undefined });
            return content.map(part => (part as LanguageModelTextPart).value).join('');
        };
        const results = JSON.parse(await read('padstone_results', { file: 'sail-loft.padstone' }));
        assert.equal(results.verdict, 'fail');
        assert.ok(results.unchecked.length > 0);
        assert.match(await read('padstone_calculation', { file: 'sail-loft.padstone', check: 'T2.bending' }), /σ_m,y,d/);
        assert.match(await read('padstone_results', { file: join('..', 'secret.padstone') }), /no such calculation/);
        assert.equal(document.getText(), before);
    });
});
