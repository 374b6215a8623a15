import type { CheckResult, Hazard, Missing, RequirementResult, Unchecked, Verdict } from '../results.js';

interface Grounds {
    readonly understood: boolean;
    readonly checks: readonly CheckResult[];
    readonly requirements: readonly RequirementResult[];
    readonly hazards: readonly Hazard[];
    readonly unchecked: readonly Unchecked[];
    readonly missing: readonly Missing[];
}

/**
 * Pass is the last thing left: only where all was understood, computed and held.
 * What fails is said before what is missing, since more information cannot mend it.
 */
export function judge(grounds: Grounds): { verdict: Verdict; verdictReason: string } {
    const failing = [...new Set(grounds.checks.filter(check => !check.pass).map(check => check.id))];
    const broken = grounds.requirements.filter(requirement => requirement.holds === false).map(requirement => `require ${requirement.text}`);
    if (failing.length + broken.length > 0) {
        return { verdict: 'fail', verdictReason: `${list([...failing, ...broken])} ${failing.length + broken.length === 1 ? 'does' : 'do'} not hold` };
    }
    if (!grounds.understood) {
        return incomplete('the text has errors, so not all of it was computed');
    }
    if (grounds.missing.length > 0) {
        return incomplete(`${list(grounds.missing.map(member => member.name))} ${grounds.missing.length === 1 ? 'was' : 'were'} not computed`);
    }
    const stop = grounds.hazards.find(hazard => hazard.severity === 'stop');
    if (stop) {
        return incomplete(`a hazard stops it: ${stop.message}`);
    }
    const blocking = grounds.unchecked.filter(item => item.blocking);
    if (blocking.length > 0) {
        return incomplete(`not checked: ${list(blocking.map(item => item.text))}`);
    }
    if (grounds.checks.length === 0) {
        return incomplete('there is no member to check');
    }
    const unknown = grounds.requirements.filter(requirement => requirement.holds === undefined);
    if (unknown.length > 0) {
        return incomplete(`not known: ${list(unknown.map(requirement => `require ${requirement.text}`))}`);
    }
    return { verdict: 'pass', verdictReason: `${count(grounds.checks.length, 'check')} made${grounds.requirements.length > 0 ? `, ${count(grounds.requirements.length, 'requirement')} set` : ''}: all hold` };
}

function count(number: number, what: string): string {
    return `${number} ${what}${number === 1 ? '' : 's'}`;
}

function incomplete(verdictReason: string): { verdict: Verdict; verdictReason: string } {
    return { verdict: 'incomplete', verdictReason };
}

function list(items: readonly string[]): string {
    const shown = items.slice(0, 4).join(', ');
    return items.length > 4 ? `${shown} and ${items.length - 4} more` : shown;
}
