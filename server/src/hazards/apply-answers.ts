import type { Answer, Finding } from '../../../language/src/model.js';
import type { Hazard } from '../results.js';
import { subjectsIn } from './telling.js';

export interface AnsweredHazards {
    readonly hazards: readonly Hazard[];
    /** A warning for each answer that answers nothing, or not all of what it is put to. */
    readonly findings: readonly Finding[];
}

/** An answered hazard stays, with its answer; one that would stop warns instead. Of several subjects each has to be answered. */
export function applyAnswers(hazards: readonly Hazard[], answers: readonly Answer[]): AnsweredHazards {
    const answered = hazards.map(hazard => withAnswer(hazard, answers.filter(answer => fits(answer, hazard))));
    return { hazards: worstFirst(answered), findings: answers.flatMap(answer => findingOf(answer, answered)) };
}

const order = ['stop', 'warn', 'note'] as const;

/** What is still open before what is answered. */
function worstFirst(hazards: readonly Hazard[]): readonly Hazard[] {
    const rank = ({ severity, answer }: Hazard): number => 2 * order.indexOf(severity) + (answer ? 1 : 0);
    return [...hazards].sort((a, b) => rank(a) - rank(b));
}

function fits({ hazard: code, subject }: Answer, hazard: Hazard): boolean {
    return code === hazard.code && (subject === undefined || subjectsIn(hazard.subject).includes(subject));
}

function withAnswer(hazard: Hazard, answers: readonly Answer[]): Hazard {
    const open = subjectsIn(hazard.subject).filter(name => !answers.some(({ subject }) => subject === undefined || subject === name));
    const [first] = answers;
    return first === undefined || open.length > 0 ? hazard : {
        ...hazard,
        severity: hazard.severity === 'stop' ? 'warn' : hazard.severity,
        answer: { what: [...new Set(answers.map(({ what }) => what))].join('; '), evidence: weakest(answers).evidence, source: first.source }
    };
}

const doubtful = ['judged', 'assumed'];

/** Several answers to one hazard are as good as the worst of them. */
function weakest(answers: readonly Answer[]): Answer {
    return answers.reduce((a, b) => doubtful.indexOf(b.evidence.word) > doubtful.indexOf(a.evidence.word) ? b : a);
}

function findingOf(answer: Answer, hazards: readonly Hazard[]): readonly Finding[] {
    const { hazard: code, subject, source } = answer;
    const found = hazards.filter(hazard => fits(answer, hazard));
    const open = found.find(hazard => hazard.answer === undefined);
    const about = subject === undefined ? '' : ` on ${subject}`;
    if (found.length === 0) {
        const others = [...new Set(hazards.filter(hazard => hazard.code === code).flatMap(hazard => subjectsIn(hazard.subject)))];
        const hint = others.length > 0 ? `; it arises on ${others.join(', ')}` : '';
        return [{ severity: 'warning', code: 'answer-to-nothing', message: `no hazard ${code}${about} arises${hint}: this answers nothing`, source }];
    }
    return open === undefined ? [] : [{
        severity: 'warning', code: 'answer-incomplete', source,
        message: `${code} arises on ${open.subject} as one: it stays open until each of them is answered`,
        related: [{ message: 'it arises here', source: open.source }]
    }];
}
