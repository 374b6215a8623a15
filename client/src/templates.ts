import { Uri, workspace, type QuickPickItem } from 'vscode';

/** A job to start from; its text is in `client/templates`. */
interface Template extends QuickPickItem {
    readonly file: string;
}

export const templates: readonly Template[] = [
    { label: 'Beam between two walls', detail: 'A new timber beam, its floor loads and its bearings', file: 'beam.padstone' },
    { label: 'Old beam with a decayed part', detail: 'A surveyed beam: what was measured, probed and judged', file: 'old-beam.padstone' }
];

export async function templateText(extensionUri: Uri, template: Template): Promise<string> {
    const file = Uri.joinPath(extensionUri, 'client', 'templates', template.file);
    return new TextDecoder().decode(await workspace.fs.readFile(file));
}
