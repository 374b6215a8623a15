import { describe, expect, it } from 'vitest';
import { evaluateText, exampleFile, examples } from '../../language/src/index.js';

describe('the examples of the reference', () => {
    it.each(examples.map(example => [example.construct, example] as const))('%s', (_, example) => {
        const { model, findings, broken } = evaluateText(exampleFile(example), 'example.padstone');
        expect(findings).toEqual([]);
        expect(broken).toEqual([]);
        expect(model.notComputed.length > 0).toBe(example.notComputed === true);
    });
});
