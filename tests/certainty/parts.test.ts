/** What is computed anew when an input changes, and that nothing of the whole is lost by it. */
import { describe, expect, it } from 'vitest';
import type { Model } from '../../language/src/model.js';
import { breakEvens, guessedPaths, politely, withInput, worstFunction, type Progress } from '../../server/src/certainty/index.js';
import { partsOf } from '../../server/src/certainty/parts.js';
import { beam, compute, granary, modelOf } from './jobs.js';

const model = modelOf(granary());

function counting(): { readonly computed: string[]; readonly compute: (part: Model) => ReturnType<typeof compute> } {
    const computed: string[] = [];
    return { computed, compute: (part) => { computed.push(part.members.map(({ name }) => name).join(' ')); return compute(part); } };
}

describe('the parts of a job', () => {
    it('are those that rest on each other', () => {
        expect(partsOf(model).map((part) => part.model.members.map(({ name }) => name))).toEqual([['B1'], ['B2', 'J1', 'J2']]);
    });

    it('have together the very checks of the whole', () => {
        const sorted = (checks: ReturnType<typeof compute>['checks']) => checks.map(({ id, utilisation, at }) => ({ id, utilisation, at })).sort((a, b) => a.id.localeCompare(b.id));
        expect(sorted(partsOf(model).flatMap((part) => compute(part.model).checks))).toEqual(sorted(compute(model).checks));
    });

    it('a hanger joins the two that it hangs', () => {
        const given = { value: 1500, evidence: { word: 'assumed', stated: false }, source: model.job.source, path: 'H1' } as const;
        const hanger = {
            name: 'H1', carries: 'B1', carriesAt: given, from: 'B2', fromAt: given, gap: given, source: model.job.source,
            rods: { count: 2, size: 'M12', diameter: 12, grade: { ...given, value: '4.6' } }
        };
        const joined = partsOf({ ...model, hangers: [hanger] });
        expect(joined.map((part) => part.model.members.length)).toEqual([4]);
        expect(joined[0]!.model.hangers).toEqual([hanger]);
    });

    it('keep every stage, with the steps that are their own', () => {
        const at = model.job.source;
        const stages = [
            { name: 'found', steps: [{ kind: 'add', elements: ['B1', 'J1'], source: at }], source: at },
            { name: 'new', steps: [{ kind: 'add', elements: ['B2', 'J2'], source: at }, { kind: 'release', members: 'all', source: at }], source: at }
        ] as const;
        const [old] = partsOf({ ...model, stages });
        expect(old!.model.stages).toEqual([
            { ...stages[0], steps: [{ ...stages[0].steps[0], elements: ['B1'] }] },
            { ...stages[1], steps: [stages[1].steps[1]] }
        ]);
    });
});

describe('the worst check', () => {
    it('of the model itself is the worst of the whole', () => {
        expect(worstFunction(model, compute)(model).utilisation).toBe(Math.max(...compute(model).checks.map(({ utilisation }) => utilisation)));
    });

    it('of a changed model is that of the parts that changed, and they alone are computed', () => {
        const { computed, compute: counted } = counting();
        const worst = worstFunction(model, counted);
        expect(computed).toEqual(['B1', 'B2 J1 J2']);
        const changed = withInput(model, 'B1.loss.top', 40);
        expect(worst(changed).utilisation).toBe(Math.max(...compute(changed).checks.filter(({ subject }) => subject === 'B1').map(({ utilisation }) => utilisation)));
        worst(withInput(model, 'useJ1', 0.0021));
        expect(computed).toEqual(['B1', 'B2 J1 J2', 'B1', 'B2 J1 J2']);
    });

    it('is looked up where the values are those of before', () => {
        const { computed, compute: counted } = counting();
        const worst = worstFunction(model, counted);
        worst(withInput(model, 'B1.loss.top', 30));
        worst(withInput(model, 'B1.loss.top', 44));
        worst(withInput(model, 'B1.loss.top', 44));
        expect(computed).toEqual(['B1', 'B2 J1 J2', 'B1']);
    });

    it('a material, a wall\'s masonry and a wall touch those that use them', () => {
        const { computed, compute: counted } = counting();
        const worst = worstFunction(model, counted);
        worst(withInput(model, 'oldOak.moisture', 0.19));
        worst(withInput(model, 'west.thick', 300));
        worst(withInput(model, 'limeBrick.fk', 2.5));
        expect(computed.slice(2)).toEqual(['B1', 'B2 J1 J2', 'B1', 'B2 J1 J2']);
    });

    it('is infinite where a member loses its results, with the reason', () => {
        const text = modelOf(beam({ statements: 'loss 1.90 m .. 2.10 m { top 35 mm }' }));
        const gone = worstFunction(text, compute)(withInput(text, 'B1.loss.top', 300));
        expect(gone).toMatchObject({ utilisation: Infinity, check: 'B1' });
        expect(gone.reason).toBeTruthy();
    });
});

describe('many break-evens', () => {
    const paths = guessedPaths(model);

    it('come one evaluation at a time, with how far they are', () => {
        const { computed, compute: counted } = counting();
        const work = breakEvens(model, paths, { worst: worstFunction(model, counted) });
        const seen: Progress[] = [];
        let most = 0;
        for (let before = computed.length, step = work.next(); ; before = computed.length, step = work.next()) {
            if (step.done) {
                expect(step.value.map(({ path }) => path)).toEqual(paths);
                break;
            }
            most = Math.max(most, computed.length - before);
            seen.push(step.value);
        }
        expect(most).toBeLessThanOrEqual(partsOf(model).length);
        expect(seen.map(({ done }) => done)).toEqual(seen.map(({ done }) => done).sort((a, b) => a - b));
        expect(seen.at(-1)).toMatchObject({ done: paths.length, of: paths.length });
    });

    it('let others have their turn, and stop when told to', async () => {
        const work = () => breakEvens(model, paths, { worst: worstFunction(model, compute) });
        let turns = 0;
        const turn = () => { turns += 1; return Promise.resolve(); };
        const all = await politely(work(), { cancelled: () => false, turn, slice: 0 });
        expect(all?.length).toBe(paths.length);
        const needed = turns;
        expect(needed).toBeGreaterThan(paths.length);
        turns = 0;
        const done: number[] = [];
        expect(await politely(work(), { cancelled: () => turns > 6, turn, slice: 0, progress: (progress) => done.push(progress.done) })).toBeUndefined();
        expect(turns).toBe(7);
        expect(done).toHaveLength(6);
    });
});
