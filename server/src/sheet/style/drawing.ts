/**
 * Lines as on a drawing (ISO 128-2, from memory; the 2:1 of wide to narrow, the double-dashed chain for an initial
 * outline, and the open circle at the origin of running dimensions with strokes at 45° seen in textbooks that quote
 * ISO 128 and ISO 129): wide for visible edges, narrow for dimensions, leaders and hatches, dashed for what is hidden,
 * chain for axes, double-dotted chain for what was there before or stands for a time. What is lost is hatched and
 * what is left stays blank, against the rule that a cut face is hatched: here the loss is what is to be seen.
 */
export const drawingStyle = `
.padstone .patterns { position: absolute; }
.padstone figure { margin: 0.8em 0; min-width: 0; }
.padstone figcaption { font-size: 0.87em; color: var(--soft); }
.padstone figcaption b { color: var(--ink); }
.padstone .drawings { display: flex; flex-wrap: wrap; gap: 0 2em; align-items: flex-end; }
.padstone .drawings .elevation { flex: 0 1 594px; }
.padstone .drawings .section { flex: 0 1 230px; }
.padstone .drawing { display: block; max-width: 100%; height: auto; overflow: visible; }
.padstone .drawing text {
    font: 11px var(--vscode-font-family, system-ui, "DejaVu Sans", sans-serif); fill: var(--ink);
    paint-order: stroke; stroke: var(--paper); stroke-width: 3px; stroke-linejoin: round;
}
.padstone .drawing path, .padstone .drawing line, .padstone .drawing rect, .padstone .drawing polygon { fill: none; stroke: var(--ink); stroke-width: 0.7px; }
.padstone .drawing .outline { stroke-width: 1.4px; stroke-linejoin: miter; }
.padstone .drawing .axis { stroke-dasharray: 11 2.5 1.5 2.5; stroke: var(--soft); }
.padstone .drawing .loss { fill: url(#hatch-loss); }
.padstone .drawing .loss-side { fill: url(#hatch-side); stroke-dasharray: 4 2; }
.padstone .drawing .masonry { fill: url(#hatch-masonry); stroke: none; }
.padstone .drawing .symbol { stroke-width: 1.1px; fill: var(--paper); }
.padstone .drawing .block { fill: var(--ink); }
.padstone .drawing .tie { stroke-width: 1.4px; }
.padstone .drawing .tick { stroke-width: 1.2px; }
.padstone .drawing .dimensions path { stroke: var(--soft); }
.padstone .drawing .dimensions .tick { stroke: var(--ink); }
.padstone .drawing .origin { fill: var(--paper); stroke: var(--ink); }
.padstone .drawing .short { stroke: var(--bad); stroke-width: 1.4px; }
.padstone .drawing text.short { fill: var(--bad); stroke: var(--paper); font-weight: bold; }
.padstone .drawing .band { fill: var(--wash); }
.padstone .drawing .arrow { stroke-width: 0.9px; }
.padstone .drawing .arrow-head { fill: var(--ink); stroke: none; }
.padstone .drawing .leader { stroke: var(--soft); stroke-width: 0.5px; }
.padstone .drawing .whole { fill: url(#hatch-loss); stroke-dasharray: 9 2 1.5 2 1.5 2; }
.padstone .drawing .residual { fill: var(--paper); stroke-width: 1.4px; }
.padstone .drawing .zero { stroke-width: 1px; }
.padstone .drawing .mark { fill: var(--paper); stroke-width: 0.9px; }
.padstone .drawing .peak { fill: var(--ink); stroke: var(--paper); stroke-width: 1px; }
.padstone .drawing .envelope { fill: var(--wash); stroke: none; }
.padstone .drawing .bound { stroke-width: 1.5px; stroke-linejoin: round; }
.padstone .drawing .dashed .bound { stroke-dasharray: 4 2.5; stroke-width: 1px; }
.padstone .drawing .hidden { stroke-dasharray: 4 2.5; }
.padstone .drawing .butt { stroke-width: 1.6px; }
.padstone .drawing .butt.hidden { stroke-width: 1.1px; }
.padstone .drawing .leaf { fill: var(--paper); stroke-width: 1.2px; }
.padstone .drawing .guide { stroke: var(--soft); stroke-width: 0.4px; stroke-dasharray: 1.5 2.5; }
.padstone .drawing circle { fill: var(--paper); stroke: var(--ink); stroke-width: 0.8px; }
.padstone .drawing .bolt path { stroke-width: 0.6px; }
.padstone .drawing .bolt .shank { stroke-dasharray: 6 1.5 1 1.5; }
.padstone .drawing .plate { stroke-width: 2px; }
.padstone .drawing .bolt .plate { stroke-width: 1.4px; }
.padstone .drawing .rod { stroke-width: 1.4px; }
.padstone .drawing .nut { fill: var(--ink); }
.padstone .drawing .passing path { stroke-dasharray: 5 1.2 1 1.2 1 1.2; }
.padstone .drawing .view-name { fill: var(--soft); }
.padstone .drawing .steel { fill: url(#hatch-steel); stroke-width: 1.1px; }
.padstone .drawing .steel.outline { stroke-width: 1.4px; }
.padstone .multiples { display: grid; grid-template-columns: repeat(auto-fill, minmax(min(100%, 285px), 1fr)); gap: 0 1.2em; }
.padstone .multiples figure { margin: 0.3em 0; }
.padstone .of-stages { margin: 0.9em 0; }
.padstone .of-stages b { color: var(--ink); }
.padstone .patterns path { stroke: var(--ink); stroke-width: 0.7px; fill: none; }
.padstone .patterns .hatch-over { stroke: var(--bad); stroke-width: 2px; }

.padstone .bar { display: block; width: 100%; max-width: 260px; height: 9px; margin: 3px 0; overflow: visible; }
.padstone .bar-room { fill: none; stroke: var(--soft); stroke-width: 1px; vector-effect: non-scaling-stroke; }
.padstone .bar-used { fill: var(--ink); }
.padstone .bar-over { fill: url(#hatch-over); stroke: var(--bad); stroke-width: 1px; vector-effect: non-scaling-stroke; }
.padstone .bar-limit { stroke: var(--ink); stroke-width: 2px; vector-effect: non-scaling-stroke; }
`;
