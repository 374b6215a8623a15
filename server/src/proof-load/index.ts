/** Each `loadtest` of a file, computed: what should be seen, what was, and what that is worth. */
import type { LoadTest, Member, Model } from '../../../language/src/model.js';
import { subjectsOf } from '../assemble/subjects.js';
import { metres, mm } from '../assemble/amounts.js';
import type { Actions } from '../analysis/actions.js';
import { createParameters } from '../catalog/parameters.js';
import type { LoadTestPoint, LoadTestResult } from '../results.js';
import { assumptions, cautions, doesNotProve, proves, type Subject } from './claims.js';
import { figuresOf, type Figures, type Point } from './figures.js';
import { outcomeOf, unseen, verdictOf } from './words.js';

/** @param actions of the whole model, for the member's design values */
export function loadTestResults(model: Model, actions: Actions): readonly LoadTestResult[] {
    const { parameters } = createParameters(model.values);
    const subjects = subjectsOf(model, parameters).of;
    return model.loadTests.map(test => {
        const { name, title, source, leaves } = test;
        const common = { name, ...title !== undefined && { title }, member: test.member, ...leaves && { leaves }, blocks: test.blocks.map(({ value }) => metres(value)), source };
        const member = model.members.find(one => one.name === test.member);
        const found = subjects.get(test.member);
        const figures = member && found ? figuresOf(model, test, member, found.kind === 'timber' ? found.strength : undefined, actions)
            : `${test.member} could not be evaluated`;
        if (!member || typeof figures === 'string') {
            return { ...common, outcome: 'not computed', points: [], verdict: `Not computed: ${figures as string}.`, proves: [], doesNotProve: ['anything: it was not computed'], assumptions: [], cautions: [] };
        }
        const kmod = (duration: 'permanent' | 'short-term'): number => parameters.kmod(found?.kind === 'timber' ? found.strength.product : 'solid', model.job.serviceClass, duration);
        const subject: Subject = {
            test, member, figures, what: whatOf(member, leaves),
            ...found?.kind === 'timber' && { kmod: { permanent: kmod('permanent'), shortTerm: kmod('short-term') } }
        };
        return { ...common, ...numbers(figures), ...words(subject) };
    });
}

function whatOf({ name, section }: Member, leaves: LoadTest['leaves']): string {
    return leaves && section.shape === 'plies' ? `${leaves.length === 1 ? 'leaf' : 'leaves'} ${leaves.join(', ')} of ${name}` : name;
}

function numbers({ points, band, back, residual, recovery, service, design }: Figures) {
    return {
        points: points.map(pointResult),
        ...band && { EMean: { value: band.mean.E, unit: 'MPa' } },
        ...back && { E: { value: back.E, unit: 'MPa' } },
        ...back?.scatter !== undefined && { EScatter: { value: back.scatter, unit: 'MPa' } },
        ...residual !== undefined && { residual: mm(residual) },
        ...recovery !== undefined && { recovery: { value: 100 * recovery, unit: '%' } },
        ...service && { momentShareService: service.moment, shearShareService: service.shear },
        ...design && { momentShareDesign: design.moment, shearShareDesign: design.shear }
    };
}

function pointResult({ weight, predicted, low, high, read }: Point): LoadTestPoint {
    return {
        weight: { value: weight.mass.value, unit: 'kg' }, at: metres(weight.at.value),
        ...weight.spread && { spread: metres(weight.spread.value) },
        predicted: mm(predicted), low: mm(low), high: mm(high), ...read !== undefined && { read: mm(read) }
    };
}

function words(subject: Subject) {
    const { figures, what, test } = subject;
    const stations = test.blocks.map(({ value }) => value);
    const hidden = unseen(figures.greatest, Math.max(...stations) - Math.min(...stations));
    return {
        outcome: outcomeOf(figures), verdict: verdictOf(figures, what), ...hidden !== undefined && { unseen: hidden },
        proves: proves(subject), doesNotProve: doesNotProve(subject), assumptions: assumptions(subject), cautions: cautions(figures)
    };
}
