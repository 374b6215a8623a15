import { describe, expect, it } from 'vitest';
import { Freshness } from './freshness.js';

describe('Freshness', () => {
    it('asks once for a version, whichever of notice and answer comes first', () => {
        const freshness = new Freshness();
        expect(freshness.has(4)).toBe(false);
        freshness.showing(4);
        freshness.notice(4);
        expect(freshness.has(4)).toBe(true);
        freshness.notice(5);
        expect(freshness.has(5)).toBe(false);
        freshness.showing(5);
        expect(freshness.has(5)).toBe(true);
    });

    it('asks again when results change while the text does not', () => {
        const freshness = new Freshness();
        freshness.notice(4);
        freshness.showing(4);
        freshness.notice(4);
        expect(freshness.has(4)).toBe(false);
    });
});
