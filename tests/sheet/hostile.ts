/** The granary with names that try everything: markup, right-to-left, emoji, ten thousand characters. */
import type { Results } from '../../server/src/results.js';
import { beam, bending, results } from './fixture.js';

const name = `<img src=x onerror=alert(1)>"'&\u202e😀مرحبا${'x'.repeat(10_000)}`;

export const hostile: Results = {
    ...results,
    file: name,
    job: { ...results.job!, title: `</style><script>alert(1)</script>${name}`, revision: { mark: name, note: name } },
    verdictReason: name,
    members: [{ ...beam, name, title: name, description: name, supportSketches: beam.supportSketches.map(support => ({ ...support, name })), loadSketches: beam.loadSketches.map(load => ({ ...load, name })) }],
    checks: [{ ...bending, subject: name, id: `${name}.bending`, combination: name, steps: [{ ...bending.steps[0]!, symbol: '\\text{<script>alert(1)</script>}', note: name }] }],
    hazards: results.hazards.map(hazard => ({ ...hazard, message: name, action: name, decider: name, subject: name })),
    survey: [{ subject: name, state: name, note: name, source: beam.source }],
    unchecked: [{ text: name, blocking: true, members: [name] }]
};
