import type { HazardRule } from './hazard-rule.js';

/** The analysis found something that can move: EN 1990 6.4.1(1)P a), loss of static equilibrium. */
export const stageUnsupported: HazardRule = {
    code: 'stage-unsupported',
    find: ({ model, actions }) => model.stages.length === 0 ? [] : actions.findings
        .filter(({ code }) => code === 'mechanism')
        .map(({ message, source }) => ({
            severity: 'stop' as const,
            subject: model.members.find(({ nameSource }) => nameSource.file === source.file && nameSource.start === source.start)?.name ?? 'stages',
            message: `A stage of the work leaves something without support: ${message}`,
            action: 'Support it before that stage takes away what holds it; nobody goes near it until then.',
            decider: 'structural engineer',
            source
        }))
};
