import type { HazardRule } from './hazard-rule.js';
import { joined } from './telling.js';

const strengthChecks = new Set(['bending', 'shear', 'bearing', 'stability', 'tension', 'compression', 'notch', 'net section', 'plies', 'butt']);
const near = 0.8;

/** A grade by eye is a judgement; it matters where a strength check is near its limit. Common practice, no source. */
export const gradeJudged: HazardRule = {
    code: 'grade-judged',
    find: ({ model, checks }) => model.members.flatMap(member => {
        const timber = model.materials.find(material => material.kind === 'timber' && material.name === member.material);
        const grade = timber?.kind === 'timber' ? timber.grade : undefined;
        const governed = checks.filter(check => check.subject === member.name && strengthChecks.has(check.check) && check.utilisation > near);
        return grade && (grade.evidence.word === 'judged' || grade.evidence.word === 'assumed') && governed.length > 0
            ? [{
                severity: 'warn' as const,
                subject: member.name,
                message: `What is found for ${joined(governed.map(check => check.id))} rests on a grade (${grade.value}) that was only ${grade.evidence.word}`,
                action: 'Have it graded by a person trained in it (EN 14081-1, EN 17121 for old timber), or try one class lower.',
                decider: 'structural engineer',
                source: grade.source
            }]
            : [];
    })
};
