import type { Reporter, TestModule } from 'vitest/node';

/** Ends a run with one plain line that any pipeline can read: `N passed, N failed`. */
export default class CountReporter implements Reporter {
    onTestRunEnd(modules: readonly TestModule[], unhandled: readonly unknown[]): void {
        const count = { passed: 0, failed: unhandled.length, skipped: 0, pending: 0 };
        for (const module of modules) {
            // A file that cannot be loaded has errors and no tests: it counts as one that failed.
            count.failed += module.errors().length;
            for (const test of module.children.allTests()) {
                count[test.result().state] += 1;
            }
        }
        const skipped = count.skipped > 0 ? `, ${count.skipped} skipped` : '';
        process.on('exit', () => process.stdout.write(`${count.passed} passed, ${count.failed} failed${skipped}\n`));
    }
}
