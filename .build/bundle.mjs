// Bundles every entry point into dist/. `--watch` rebuilds on change; `--minify` for the package.
import * as esbuild from 'esbuild';

const watch = process.argv.includes('--watch');
const minify = process.argv.includes('--minify');

const common = {
    bundle: true,
    minify,
    sourcemap: minify ? false : 'linked',
    logLevel: 'warning',
    target: 'es2022',
    jsx: 'automatic',
    jsxImportSource: 'preact',
    loader: { '.css': 'text' }
};
const node = { ...common, platform: 'node', format: 'cjs', target: 'node20' };
const browser = { ...common, platform: 'browser' };

const bundles = [
    { ...node, entryPoints: { padstone: 'server/src/command/main.ts' }, outdir: 'dist', outExtension: { '.js': '.cjs' }, banner: { js: '#!/usr/bin/env node' } },
    { ...node, entryPoints: { server: 'server/src/main.node.ts' }, outdir: 'dist', outExtension: { '.js': '.cjs' } },
    { ...node, entryPoints: { client: 'client/src/extension.node.ts' }, outdir: 'dist', outExtension: { '.js': '.cjs' }, external: ['vscode'] },
    { ...browser, format: 'iife', entryPoints: { 'server.web': 'server/src/main.browser.ts' }, outdir: 'dist' },
    { ...browser, format: 'cjs', entryPoints: { 'client.web': 'client/src/extension.browser.ts' }, outdir: 'dist', external: ['vscode'] },
    { ...browser, format: 'iife', entryPoints: { preview: 'client/preview/main.ts' }, outdir: 'dist' }
];

for (const options of bundles) {
    if (watch) {
        await (await esbuild.context(options)).watch();
    } else {
        await esbuild.build(options);
    }
}
