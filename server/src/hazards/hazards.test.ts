import { describe, expect, it } from 'vitest';
import { evaluateText } from '../../../language/src/index.js';
import { compute } from '../compute.js';

const sound = {
    job: 'job "Boathouse" { service class 2 }',
    survey: 'survey { services checked "none" asbestos checked "none" lead checked "none" damp source fixed "gutter" heritage consent granted "letter of May" }',
    timber: 'timber pine { grade C24 (graded "stamped") moisture 15 % (measured) }',
    extra: '',
    support: 'on pier at 0.10 m bearing 100 mm on pier at 3.90 m bearing 100 mm',
    loss: 'loss 1.00 m .. 1.60 m { top 20 mm } (probed "awl")',
    load: 'load deck permanent 1.0 kN/m on B'
};

async function hazardsOf(change: Partial<typeof sound> = {}): Promise<string[]> {
    const parts = { ...sound, ...change };
    const text = `${parts.job}\n${parts.survey}\n${parts.timber}\nwall pier { }\n`
        + `member B { of pine section 100 x 200 mm length 4.00 m ${parts.support} ${parts.loss} ${parts.extra} restrained }\n${parts.load}`;
    const results = compute(await evaluateText(text, 'boathouse.padstone'));
    expect(results.findings.filter(finding => finding.severity === 'error' && !finding.code.endsWith('fails'))).toEqual([]);
    return results.hazards.map(hazard => `${hazard.severity} ${hazard.code} ${hazard.subject}`);
}

describe('hazard rules', () => {
    it('stay quiet on a sound job', async () => {
        expect(await hazardsOf()).toEqual([]);
    });

    const firing: readonly [string, Partial<typeof sound>, string][] = [
        ['an untied support that lifts', { support: 'on pier at 0.10 m bearing 100 mm on pier at 1.20 m bearing 100 mm' }, 'stop uplift-not-tied B'],
        ['a loss that was only judged', { loss: 'loss 1.00 m .. 1.60 m { top 20 mm } (judged "by eye")' }, 'warn loss-not-probed B'],
        ['a loss with no evidence', { loss: 'loss 1.00 m .. 1.60 m { top 20 mm }' }, 'warn loss-not-probed B'],
        ['damp that still comes in', { survey: sound.survey.replace('damp source fixed "gutter"', 'damp source not found') }, 'warn damp-source-open B'],
        ['wet timber', { timber: sound.timber.replace('15 %', '20 %') }, 'warn timber-wet pine'],
        ['a notch near midspan', { extra: 'notch bottom 1.90 m .. 2.00 m deep 15 mm' }, 'warn notch-in-field B'],
        ['a loss of more than a sixth of the depth', { loss: 'loss 1.00 m .. 1.60 m { bottom 34 mm } (probed)' }, 'note loss-edge-sharp B'],
        ['a judged grade near its limit', { timber: 'timber pine { grade C24 (judged "few knots") }', load: 'load deck permanent 3.0 kN/m on B' }, 'warn grade-judged B'],
        ['services not looked for', { survey: sound.survey.replace('services checked "none"', 'services not checked') }, 'note services-unknown survey'],
        ['services not looked for where holes are drilled', { survey: sound.survey.replace('services checked "none"', 'services not checked'), extra: 'hole 12 mm at 0.60 m' }, 'warn services-unknown survey'],
        ['asbestos not looked for', { survey: sound.survey.replace('asbestos checked "none"', 'asbestos not checked') }, 'warn old-finishes-unknown survey'],
        ['no survey of finishes at all', { survey: sound.survey.replace('asbestos checked "none" lead checked "none"', '') }, 'warn old-finishes-unknown survey'],
        ['consent that has not come', { survey: sound.survey.replace('granted "letter of May"', 'pending') }, 'warn heritage-consent-open survey']
    ];

    for (const [what, change, expected] of firing) {
        it(`warn of ${what}`, async () => {
            expect(await hazardsOf(change)).toContain(expected);
        });
    }

    it('are quiet about uplift where the support is tied', async () => {
        const tied = await hazardsOf({ support: 'on pier at 0.10 m bearing 100 mm tied on pier at 1.20 m bearing 100 mm' });
        expect(tied.filter(hazard => hazard.includes('uplift'))).toEqual([]);
    });

    it('put what stops the work first, and a stop forbids a pass', async () => {
        const text = `${sound.job}\n${sound.survey}\n${sound.timber}\nmasonry stone { fk 6 MPa (tested) }\nwall pier { of stone thick 400 mm }\n`
            + 'member B { of pine section 100 x 300 mm length 2.00 m on pier at 0.10 m bearing 200 mm on pier at 1.00 m bearing 200 mm restrained }\nload deck permanent 0.5 kN/m on B';
        const results = compute(await evaluateText(text, 'boathouse.padstone'));
        expect(results.checks.every(check => check.pass)).toBe(true);
        expect(results.hazards[0]).toMatchObject({ severity: 'stop', code: 'uplift-not-tied' });
        expect(results.verdict).toBe('incomplete');
    });
});
