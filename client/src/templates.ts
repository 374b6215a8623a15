import type { QuickPickItem } from 'vscode';

/** A job to start from; its text is in `client/templates`. */
export interface Template extends QuickPickItem {
    readonly file: string;
    readonly detail: string;
}

export const templates: readonly Template[] = [
    { label: 'Floor joist between two walls', detail: 'A new joist of a dwelling floor: loads, bearings, vibration', file: 'joist.padstone' },
    { label: 'Old beam with a decayed part', detail: 'A surveyed beam: what is measured, probed and judged', file: 'old-beam.padstone' }
];
