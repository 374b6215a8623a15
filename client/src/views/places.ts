import { l10n, Range, ThemeColor, ThemeIcon, Uri, type Command } from 'vscode';

/** Shows a line, from 1, of a document. */
export function goTo(uri: string, line: number): Command {
    return { title: l10n.t('Show in the text'), command: 'vscode.open', arguments: [Uri.parse(uri), { selection: new Range(line - 1, 0, line - 1, 0) }] };
}

export function holdsIcon(holds: boolean): ThemeIcon {
    return holds ? new ThemeIcon('pass', new ThemeColor('testing.iconPassed')) : new ThemeIcon('error', new ThemeColor('testing.iconFailed'));
}
