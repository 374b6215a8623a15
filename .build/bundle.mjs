// Bundles every entry point into dist/, or into another folder: `--out FOLDER`. `--watch` rebuilds on change; `--minify` for the package.
import { cp } from 'node:fs/promises';
import * as esbuild from 'esbuild';

const watch = process.argv.includes('--watch');
const minify = process.argv.includes('--minify');
const outdir = process.argv.includes('--out') ? process.argv[process.argv.indexOf('--out') + 1] : 'dist';

const common = {
    bundle: true,
    minify,
    charset: 'utf8',
    // Imported as a module by some and required by others: one copy for both.
    alias: { 'vscode-languageserver-types': './node_modules/vscode-languageserver-types/lib/esm/main.js' },
    sourcemap: minify ? false : 'linked',
    logLevel: 'warning',
    target: 'es2022',
    jsx: 'automatic',
    jsxImportSource: 'preact',
    loader: { '.css': 'text' }
};
const node = { ...common, platform: 'node', format: 'cjs', target: 'node20' };
/** Libraries that are written as ES modules ask for their own address, which a bundle in the older format has not. */
const command = {
    ...node,
    outExtension: { '.js': '.cjs' },
    define: { 'import.meta.url': 'bundleUrl' },
    banner: { js: '#!/usr/bin/env node\nconst bundleUrl = require("node:url").pathToFileURL(__filename).href;' }
};
const browser = { ...common, platform: 'browser' };

const bundles = [
    { ...command, entryPoints: { padstone: 'server/src/command/main.ts' }, outdir },
    { ...node, entryPoints: { server: 'server/src/main.node.ts' }, outdir, outExtension: { '.js': '.cjs' } },
    { ...node, entryPoints: { client: 'client/src/extension.node.ts' }, outdir, outExtension: { '.js': '.cjs' }, external: ['vscode'] },
    { ...browser, format: 'iife', entryPoints: { 'server.web': 'server/src/main.browser.ts' }, outdir },
    { ...browser, format: 'cjs', entryPoints: { 'client.web': 'client/src/extension.browser.ts' }, outdir, external: ['vscode'] },
    { ...browser, format: 'iife', entryPoints: { preview: 'client/preview/main.ts' }, outdir }
];

for (const options of bundles) {
    if (watch) {
        await (await esbuild.context(options)).watch();
    } else {
        await esbuild.build(options);
    }
}

// The font of a PDF, beside the command that writes it, with its licence.
const font = 'node_modules/dejavu-fonts-ttf';
for (const [from, to] of [['ttf/DejaVuSans.ttf'], ['ttf/DejaVuSans-Bold.ttf'], ['LICENSE', 'LICENSE']]) {
    await cp(`${font}/${from}`, `${outdir}/fonts/${to ?? from.split('/').at(-1)}`);
}

// VS Code looks for the manifest's words beside it.
for (const words of ['package.nls.json', 'package.nls.de.json']) {
    await cp(`client/l10n/${words}`, words);
}
