import type { QuickPickItem } from 'vscode';

/** A job to start from; its text is in `client/templates`. */
export interface Template extends QuickPickItem {
    readonly file: string;
}

export const templates: readonly Template[] = [
    { label: 'Beam between two walls', detail: 'A new timber beam, its floor loads and its bearings', file: 'beam.padstone' },
    { label: 'Old beam with a decayed part', detail: 'A surveyed beam: what is measured, probed and judged', file: 'old-beam.padstone' }
];
