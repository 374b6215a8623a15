/** What the file says was done about a hazard is put to it, printed, and checked to be put to one that arises. */
import { describe, expect, it } from 'vitest';
import type { Answer } from '../../language/src/model.js';
import { applyAnswers } from '../../server/src/hazards/index.js';
import type { Hazard } from '../../server/src/results.js';
import { relief, resultsOf, textOf, told, type Change } from './job.js';

const source = { file: 'rope-walk.padstone', start: 0, end: 1, line: 1, column: 1 };
const hazard = (code: string, severity: Hazard['severity'], subject: string): Hazard =>
    ({ code, severity, subject, message: 'm', action: 'a', decider: 'you', source });
const answer = (code: string, subject?: string, what = 'strapped', word: Answer['evidence']['word'] = 'measured'): Answer =>
    ({ hazard: code, ...subject !== undefined && { subject }, what, evidence: { word, stated: true }, source: { ...source, line: 9 } });

describe('answers as the file writes them', () => {
    const lifts: Change = { supports: 'on west at 0.10 m bearing 150 mm on east at 1.20 m bearing 150 mm' };
    const strapped = 'answer uplift-not-tied on T "strapped to the wall plate" (measured "pull of 6 kN")';

    it('let a job pass that nothing else stops, and stay on it', () => {
        const weak = { ...lifts, loads: 'load floor permanent 0.2 kN/m on T' };
        expect(resultsOf(weak)).toMatchObject({ verdict: 'incomplete', verdictReason: expect.stringContaining('a hazard stops it') });
        const { verdict, hazards, findings } = resultsOf({ ...weak, answers: strapped });
        expect(verdict).toBe('pass');
        expect(hazards.map(told)).toContain('warn uplift-not-tied T');
        expect(hazards.find(({ code }) => code === 'uplift-not-tied')?.answer).toMatchObject({ what: 'strapped to the wall plate', evidence: { word: 'measured', note: 'pull of 6 kN' } });
        expect(findings.filter(({ code }) => code === 'uplift-not-tied')).toMatchObject([
            { severity: 'info', message: expect.stringMatching(/lifts off west.*Answered: strapped to the wall plate \(measured: pull of 6 kN\)$/), related: [{ message: 'the answer is here' }] }
        ]);
    });

    it('are told where they stand if nothing of the kind arises', () => {
        const { hazards, findings } = resultsOf({ ...lifts, answers: 'answer timber-wet "dried for a year" (measured)' });
        expect(hazards.map(told)).toContain('stop uplift-not-tied T');
        expect(findings.filter(({ severity }) => severity === 'warning').map(({ code, source: { line } }) => [code, line]))
            .toEqual([['answer-to-nothing', textOf(lifts).split('\n').length]]);
    });

    it('do not hide that a check fails', () => {
        const change: Change = { stages: 'stage found { T }\nstage new { N }', added: relief.split('\n')[0]!, access: 'access { carry <= 50 kg }', answers: 'answer piece-too-heavy on N "hoist hired" (documented)' };
        const { verdict, verdictReason, hazards } = resultsOf(change);
        expect(hazards.find(({ code }) => code === 'piece-too-heavy')?.answer?.what).toBe('hoist hired');
        expect([verdict, verdictReason]).toEqual(['fail', 'N.carry does not hold']);
    });
});

describe('an answer', () => {
    it('stays with its hazard, which stops no longer and keeps all that it says', () => {
        const stop = hazard('uplift-not-tied', 'stop', 'T');
        const { hazards, findings } = applyAnswers([stop], [answer('uplift-not-tied', 'T')]);
        expect(hazards).toEqual([{ ...stop, severity: 'warn', answer: { what: 'strapped', evidence: { word: 'measured', stated: true }, source: { ...source, line: 9 } } }]);
        expect(findings).toEqual([]);
    });

    it('leaves a warning a warning and a note a note', () => {
        const { hazards } = applyAnswers([hazard('timber-wet', 'warn', 'larch'), hazard('splice-play', 'note', 'S')], [answer('timber-wet'), answer('splice-play')]);
        expect(hazards.map(({ severity, answer: given }) => `${severity} ${given?.what}`)).toEqual(['warn strapped', 'note strapped']);
    });

    it('without a subject answers all of its code and nothing else', () => {
        const { hazards } = applyAnswers([hazard('uplift-not-tied', 'stop', 'T'), hazard('uplift-not-tied', 'stop', 'J'), hazard('hanger-slack', 'stop', 'H1')], [answer('uplift-not-tied')]);
        expect(hazards.map(({ severity, subject }) => `${severity} ${subject}`)).toEqual(['stop H1', 'warn T', 'warn J']);
    });

    it('on one subject leaves the others as they are', () => {
        const { hazards } = applyAnswers([hazard('uplift-not-tied', 'stop', 'T'), hazard('uplift-not-tied', 'stop', 'J')], [answer('uplift-not-tied', 'J')]);
        expect(hazards.map(({ severity }) => severity)).toEqual(['stop', 'warn']);
    });

    it('on one of several joined subjects is not enough, and says so', () => {
        const joint = [hazard('hanger-slack', 'stop', 'H1, H2')];
        const half = applyAnswers(joint, [answer('hanger-slack', 'H1')]);
        expect(half.hazards).toEqual(joint);
        expect(half.findings).toMatchObject([{ severity: 'warning', code: 'answer-incomplete', source: { line: 9 } }]);
        const whole = applyAnswers(joint, [answer('hanger-slack', 'H1', 'left out'), answer('hanger-slack', 'H2', 'tightened', 'judged')]);
        expect(whole.hazards).toMatchObject([{ severity: 'warn', answer: { what: 'left out; tightened', evidence: { word: 'judged' } } }]);
        expect(whole.findings).toEqual([]);
    });

    it('to what does not arise is a warning, which names where it does', () => {
        const { hazards, findings } = applyAnswers([hazard('uplift-not-tied', 'stop', 'T')], [answer('uplift-not-tied', 'J'), answer('timber-wet')]);
        expect(hazards[0]).toMatchObject({ severity: 'stop' });
        expect(hazards[0]).not.toHaveProperty('answer');
        expect(findings.map(({ severity, code, message }) => `${severity} ${code}: ${message}`)).toEqual([
            'warning answer-to-nothing: no hazard uplift-not-tied on J arises; it arises on T: this answers nothing',
            'warning answer-to-nothing: no hazard timber-wet arises: this answers nothing'
        ]);
    });
});
