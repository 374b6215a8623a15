import type { HazardRule } from './hazard-rule.js';

/** Fungi that rot timber need about 20 % moisture and more: EN 335, use class 2 (from memory). */
const wet = 0.20;

export const timberWet: HazardRule = {
    code: 'timber-wet',
    find: ({ model }) => model.materials.flatMap(material => material.kind === 'timber' && material.moisture && material.moisture.value >= wet
        ? [{
            severity: 'warn' as const,
            subject: material.name,
            message: `${material.name} has ${Math.round(100 * material.moisture.value)} % moisture: decay can go on at 20 % and more`,
            action: 'Dry it and measure again; until then take service class 3.',
            decider: 'you',
            source: material.moisture.source
        }]
        : [])
};
