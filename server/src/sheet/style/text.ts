export const textStyle = `
.padstone {
    color-scheme: light dark;
    --ink: var(--vscode-editor-foreground, light-dark(#1a1a1a, #e6e6e6));
    --soft: var(--vscode-descriptionForeground, light-dark(#555, #b0b0b0));
    --paper: var(--vscode-editor-background, light-dark(#fff, #1c1d1f));
    --rule: var(--vscode-contrastBorder, var(--vscode-panel-border, light-dark(#c4c4c4, #505050)));
    --link: var(--vscode-textLink-foreground, light-dark(#0b57a4, #86baf2));
    --bad: var(--vscode-errorForeground, light-dark(#a31515, #ff968c));
    --good: light-dark(#17662f, #7ccf95);
    --doubt: light-dark(#754e00, #e6be6a);
    --wash: color-mix(in srgb, var(--ink) 7%, transparent);
    color: var(--ink);
    background: var(--paper);
    font: var(--vscode-font-size, 14px)/1.45 var(--vscode-font-family, system-ui, "DejaVu Sans", sans-serif);
    overflow-wrap: break-word;
}
@media (forced-colors: active) {
    .padstone {
        --ink: CanvasText; --soft: CanvasText; --paper: Canvas; --rule: CanvasText; --link: LinkText;
        --bad: CanvasText; --good: CanvasText; --doubt: CanvasText; --wash: Canvas;
    }
}
.vscode-light .padstone, .vscode-high-contrast-light .padstone { color-scheme: light; }
.vscode-dark .padstone, .vscode-high-contrast:not(.vscode-high-contrast-light) .padstone { color-scheme: dark; }
.stale .padstone { opacity: 0.5; filter: grayscale(1); }
.stale .padstone .verdict::before { content: "Out of date: "; font-weight: bold; }

.padstone h1 { font-size: 1.5em; line-height: 1.2; margin: 0.4em 0 0.1em; }
.padstone h2 { font-size: 1.15em; margin: 1.8em 0 0.5em; padding-bottom: 0.15em; border-bottom: 1px solid var(--rule); }
.padstone h3 { font-size: 1em; margin: 1.4em 0 0.3em; }
.padstone h1, .padstone .title, .padstone .name { unicode-bidi: isolate; overflow-wrap: anywhere; }
.padstone p, .padstone li, .padstone dd { overflow-wrap: anywhere; }
.padstone h1 { display: -webkit-box; -webkit-box-orient: vertical; -webkit-line-clamp: 4; overflow: hidden; }
.padstone h3 .title { display: inline-block; vertical-align: bottom; max-width: 100%; max-height: 4.4em; overflow: hidden; font-weight: normal; }
.padstone h3 .name { display: inline-block; vertical-align: bottom; max-width: 16em; overflow: hidden; text-overflow: ellipsis; white-space: nowrap; }
.padstone p { margin: 0.3em 0; }
.padstone ul, .padstone ol { margin: 0.4em 0; padding-left: 1.4em; }
.padstone li { margin: 0.25em 0; }
.padstone a { color: var(--link); text-decoration: underline; text-decoration-thickness: 1px; text-underline-offset: 2px; }
.padstone a:hover { text-decoration-thickness: 2px; }
.padstone :focus-visible { outline: 2px solid var(--vscode-focusBorder, var(--link)); outline-offset: 2px; }
.padstone code { font-family: var(--vscode-editor-font-family, ui-monospace, "DejaVu Sans Mono", monospace); font-size: 0.95em; background: none; color: inherit; }
.padstone .small { font-size: 0.87em; color: var(--soft); }
.padstone .line { font-size: 0.8em; color: var(--soft); white-space: nowrap; font-weight: normal; }
.padstone .line[data-line] { cursor: pointer; }
.padstone button.line { font-family: inherit; line-height: inherit; background: none; border: 0; padding: 0; }
.padstone button.line:hover { text-decoration: underline; }
.padstone .number { white-space: nowrap; font-variant-numeric: tabular-nums; }

.padstone .revision { margin: 0 0 0.8em; color: var(--soft); }
.padstone .verdict { border: 1px solid var(--rule); border-left: 6px solid; padding: 0.4em 0.8em; background: var(--wash); }
.padstone .verdict p:first-of-type { font-size: 1.15em; }
.padstone .verdict.pass { border-left-color: var(--good); }
.padstone .verdict.fail { border-left-color: var(--bad); border-left-style: double; }
.padstone .verdict.incomplete { border-left-color: var(--doubt); border-left-style: dashed; }
.padstone .verdict.pass p:first-of-type, .padstone .outcome.pass { color: var(--good); }
.padstone .verdict.fail p:first-of-type, .padstone .outcome.fail { color: var(--bad); font-weight: bold; }
.padstone .verdict.incomplete p:first-of-type, .padstone .outcome.incomplete { color: var(--doubt); font-weight: bold; }
.padstone .outcome { white-space: nowrap; }
.padstone .facts { display: grid; gap: 0.15em; margin: 0.7em 0 0; font-size: 0.87em; }
.padstone .facts > div { display: flex; gap: 0.6em; }
.padstone .facts dt { flex: none; width: 5.5em; color: var(--soft); }
.padstone .facts dd { margin: 0; min-width: 0; }

.padstone .table { overflow-x: auto; }
.padstone caption { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); white-space: nowrap; }
.padstone .table + .table { margin-top: 1.2em; }
.padstone table { border-collapse: collapse; width: 100%; font-size: inherit; }
.padstone th, .padstone td { text-align: left; vertical-align: top; padding: 0.35em 0.9em 0.35em 0; border-bottom: 1px solid var(--rule); font-weight: normal; }
.padstone th:last-child, .padstone td:last-child { padding-right: 0; }
.padstone thead th { font-size: 0.87em; color: var(--soft); padding-top: 0; }
.padstone tbody th { font-weight: 600; }
.padstone table.members { table-layout: fixed; }
.padstone table.members th:first-child { width: 30%; }
.padstone table.members th:last-child, .padstone table.members td:last-child { width: 25%; }
.padstone table.members tbody td[colspan] { width: auto; }
.padstone table.members .small, .padstone table.members .title, .padstone table.loads .small { display: block; font-weight: normal; }
.padstone table.members .title { max-height: 4.4em; overflow: hidden; }
.padstone table .name { display: block; max-width: 16em; overflow: hidden; text-overflow: ellipsis; white-space: nowrap; }
.padstone li p, .padstone .verdict p, .padstone summary { max-height: 24em; overflow: hidden; }
.padstone table.by-stage, .padstone table.stages, .padstone table.bolts, .padstone table.modes { width: auto; font-size: 0.93em; }
.padstone table.by-stage { margin: 0.4em 0 0.4em 1em; }
.padstone .hanger table.by-stage { margin-left: 0; }
.padstone table.bolts th, .padstone table.bolts td { padding-top: 0.1em; padding-bottom: 0.1em; }
.padstone table.modes th { font-weight: normal; }
.padstone table.modes { margin: 0.3em 0 0.6em 1em; }
.padstone table.modes .governing > * { background: var(--wash); }
.padstone .stages > li { margin: 0.6em 0; }
.padstone table.reactions { width: auto; margin-top: 0.6em; }

.padstone .hazards { list-style: none; padding: 0; }
.padstone .hazards li { border-left: 4px solid var(--rule); padding: 0.1em 0 0.1em 0.8em; margin: 0.7em 0; }
.padstone .hazards li.stop { border-left: 6px double var(--bad); }
.padstone .hazards li.warn { border-left-style: dashed; border-left-color: var(--doubt); }
.padstone .hazards .stop .severity { color: var(--bad); }
.padstone .hazards .warn .severity { color: var(--doubt); }
.padstone .hazards .answered { border-left: 4px solid var(--rule); }
.padstone .hazards .answer { margin: 0.2em 0 0.2em 1em; }
.padstone h4 { font-size: 0.95em; margin: 0.8em 0 0.2em; }
.padstone .load-test > ul { margin-top: 0.2em; }
.padstone .outcome-said.doubted { color: var(--bad); }
.padstone table.readings, .padstone table.grades { width: auto; }
.padstone table.options .small { display: block; font-weight: normal; }
.padstone table.limits td p { margin: 0; max-height: none; }
.padstone .errors li { color: var(--bad); }

.padstone details { border-top: 1px solid var(--rule); padding: 0.35em 0; }
.padstone h2 + details { border-top: 0; }
.padstone summary { cursor: pointer; }
.padstone .governs { margin: 0.4em 0 0.6em; }
.padstone .calculation { container-type: inline-size; }
.padstone .worked { overflow-x: auto; overflow-y: hidden; }
.padstone .step { margin: 0.7em 0 0.7em 1em; }
.padstone .formula { display: flex; flex-wrap: wrap; align-items: baseline; gap: 0.35em; padding: 2px 0; }
.padstone .formula a { color: inherit; text-decoration: underline dotted 1px var(--link); text-underline-offset: 2px; }
.padstone :target { background: var(--wash); outline: 2px solid var(--link); outline-offset: 2px; }
.padstone .step > .small { margin: 0.1em 0 0; }
@container (min-width: 44em) {
    .padstone .step:not(.long) { display: grid; grid-template-columns: minmax(0, 1fr) 17em; gap: 0 1.2em; align-items: center; }
    .padstone .where { columns: 3; }
}
.padstone math { font-family: "Cambria Math", "STIX Two Math", "Latin Modern Math", "DejaVu Math TeX Gyre", math; font-size: 1.1em; }
.padstone .where { margin: 0.6em 0 0.4em 1em; font-size: 0.87em; }
.padstone .where > div { display: flex; gap: 0.7em; padding: 0.1em 0; break-inside: avoid; }
.padstone .where dt { flex: none; min-width: 3.6em; }
.padstone .where dd { margin: 0; color: var(--soft); min-width: 0; }
.padstone .signature > div { display: flex; align-items: flex-end; height: 2.6em; gap: 1em; }
.padstone .signature dt { flex: none; width: 14em; }
.padstone .signature dd { flex: 1; margin: 0; border-bottom: 1px solid var(--ink); }
`;
