import { defineConfig } from 'vitest/config';

export default defineConfig({
    root: new URL('..', import.meta.url).pathname,
    esbuild: { jsx: 'automatic', jsxImportSource: 'preact' },
    test: {
        include: ['{language,server,client}/**/*.test.{ts,tsx}', 'tests/**/*.test.{ts,tsx}'],
        reporters: ['default', './tests/count-reporter.ts'],
        testTimeout: 60_000,
        hookTimeout: 120_000
    }
});
