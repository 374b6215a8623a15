/** Quick fixes whose answer is a number or a word, over the real connection. */
import { CodeActionRequest, type CodeAction } from 'vscode-languageserver/node';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { evaluateText } from '../../language/src/index.js';
import { percentUp } from '../../server/src/sheet/numbers.js';
import { compute } from '../../server/src/compute.js';
import { Client } from './client.js';
import { position, shed } from './jobs.js';

let client: Client;
beforeAll(async () => { client = await Client.start(); });
afterAll(async () => { expect(await client.stop()).toBe(0); });

let documents = 0;
async function actionsAt(text: string, needle: string, offset = 1): Promise<{ readonly actions: CodeAction[]; readonly after: (title: RegExp) => string }> {
    const uri = `file:///fixes/job-${++documents}.padstone`;
    await client.open(uri, text);
    const place = position(text, needle, offset);
    const actions = await client.connection.sendRequest(CodeActionRequest.type, { textDocument: { uri }, range: { start: place, end: place }, context: { diagnostics: [] } }) as CodeAction[];
    const after = (title: RegExp) => {
        const action = actions.find(one => title.test(one.title));
        if (!action) throw new Error(`no ${title} among ${actions.map(one => one.title).join('; ')}`);
        return TextDocument.applyEdits(TextDocument.create(uri, 'padstone', 1, text), action.edit!.changes![uri]!);
    };
    return { actions, after };
}
const results = (text: string) => compute(evaluateText(text, 'job.padstone'));
const errors = (text: string) => results(text).findings.filter(({ severity }) => severity === 'error').map(({ message }) => message);

test.each([
    ['a sawn section', shed.replace('1.50 kN/m2', '4.50 kN/m2'), 'member B1', 'B1'],
    ['leaves', shed.replace('1.50 kN/m2', '4.50 kN/m2').replace('section 100 x 250 mm (measured "tape")', 'plies 2 of 50 x 250 mm (measured "tape")\n  bolts M12 grade 8.8 every 400 mm'), 'member B1', 'B1'],
    ['a rolled section', shed.replace('1.50 kN/m2', '4.50 kN/m2').replace('of pine\n  section 100 x 250 mm (measured "tape")', 'of S235\n  section IPE 100'), 'member B1', 'B1']
])('%s that is too small: the next sizes that pass, each with the use that it has', async (_, text, needle, member) => {
    expect(results(text).checks.some(({ subject, pass }) => subject === member && !pass)).toBe(true);
    const { actions, after } = await actionsAt(text, needle, 8);
    const sizes = actions.filter(({ title }) => title.startsWith('Make it '));
    expect(sizes.length).toBeGreaterThan(0);
    for (const { title } of sizes) {
        const [, check, use] = title.match(/: (.+) (\d+ %)$/)!;
        const changed = results(after(new RegExp(`^${title.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')}$`)));
        const own = changed.checks.filter(({ subject }) => subject === member);
        expect(own.every(({ pass }) => pass)).toBe(true);
        const worst = own.reduce((most, one) => one.utilisation > most.utilisation ? one : most);
        expect([worst.check, percentUp(worst.utilisation)]).toEqual([check, use]);
    }
});

test('an input without evidence: a word to choose', async () => {
    const text = shed;
    const { actions, after } = await actionsAt(text, '1.50 kN/m2', 2);
    expect(actions.map(({ title }) => title)).toEqual(expect.arrayContaining(['Say that gear is measured', 'Say that gear is judged']));
    const changed = after(/gear is measured/);
    expect(changed).toContain('1.50 kN/m2 (measured) strip');
    expect(errors(changed)).toEqual(errors(text));
    expect(results(changed).ledger.find(({ path }) => path === 'gear')!.evidence.word).toBe('measured');
});

test('a loss that was not probed: that it was, in the place of what it says', async () => {
    const text = shed.replace('restrained every 600 mm', 'loss 1.80 m .. 2.40 m { top 30 mm } (judged)\n  restrained every 600 mm');
    const changed = (await actionsAt(text, 'loss 1.80', 2)).after(/probed/);
    expect(changed).toContain('{ top 30 mm } (probed "…")\n');
    expect(results(changed).hazards.some(({ code }) => code === 'loss-not-probed')).toBe(false);
});

test('a hazard: the line that answers it, or the line of the survey', async () => {
    const loss = shed.replace('restrained every 600 mm', 'loss 1.80 m .. 2.40 m { top 30 mm } (judged)\n  restrained every 600 mm');
    const answered = (await actionsAt(loss, 'loss 1.80', 2)).after(/^Answer it: answer loss-not-probed on B1/);
    expect(errors(answered)).toEqual(errors(loss));
    expect(results(answered).hazards.find(({ code }) => code === 'loss-not-probed')!.answer!.what).toBe('…');

    const surveyed = (await actionsAt(shed, '"Boat')).after(/^Write in the survey: asbestos checked/);
    expect(surveyed).toMatch(/\nsurvey \{\n {2}asbestos checked "…"\n\}\n$/);
    const more = (await actionsAt(`survey { services checked }\n${shed}`, 'survey {')).after(/^Write in the survey: asbestos checked/);
    expect(more).toContain('survey {\n  asbestos checked "…" services checked }');
    for (const text of [surveyed, more]) {
        expect(errors(text)).toEqual([]);
        expect(results(text).survey.some(({ subject }) => subject === 'asbestos')).toBe(true);
    }
});
