export interface PreviewFrame {
    readonly nonce: string;
    /** Address of the page's own script. */
    readonly script: string;
    /** Of the document that is shown. */
    readonly uri: string;
}

/** The page of the preview: an empty frame that runs nothing and loads nothing but its own script. */
export function previewPage({ nonce, script, uri }: PreviewFrame): string {
    const policy = `default-src 'none'; style-src 'nonce-${nonce}'; script-src 'nonce-${nonce}'`;
    return `<!DOCTYPE html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policy}">
<meta name="viewport" content="width=device-width">
<title>Padstone preview</title>
<style nonce="${nonce}">${frameStyle}</style>
<style nonce="${nonce}" id="sheet-style"></style>
</head>
<body data-uri="${escapeAttribute(uri)}">
<p id="banner" role="status" hidden></p>
<main id="sheet"></main>
<script nonce="${nonce}" src="${escapeAttribute(script)}"></script>
</body>
</html>`;
}

export function newNonce(): string {
    return [...crypto.getRandomValues(new Uint8Array(16))].map(byte => byte.toString(16).padStart(2, '0')).join('');
}

function escapeAttribute(text: string): string {
    return text.replaceAll('&', '&amp;').replaceAll('"', '&quot;').replaceAll('<', '&lt;');
}

const frameStyle = `
#banner {
    position: fixed; inset: auto 0 0 0; z-index: 1; margin: 0; padding: 6px 20px;
    color: var(--vscode-inputValidation-warningForeground, var(--vscode-foreground));
    background: var(--vscode-inputValidation-warningBackground);
    border-top: 1px solid var(--vscode-inputValidation-warningBorder);
}
#banner[hidden] { display: none; }
#sheet { padding-bottom: 40px; }
#sheet .at-cursor { box-shadow: -8px 0 0 var(--vscode-editor-background), -11px 0 0 var(--vscode-focusBorder); }
`;
