import { spawnSync } from 'node:child_process';
import { readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { templates } from './templates.js';

const root = fileURLToPath(new URL('../..', import.meta.url));

describe('job templates', () => {
    it('are offered all', () => {
        expect(templates.map(template => template.file).sort()).toEqual(readdirSync(`${root}/client/templates`).sort());
    });

    it.each(templates.map(template => template.file))('%s is computed whole, and holds', file => {
        const { stdout, stderr } = spawnSync(process.execPath, ['dist/padstone.cjs', 'check', `client/templates/${file}`, '--format', 'json'], { cwd: root, encoding: 'utf8' });
        expect(stderr).toBe('');
        const [job] = JSON.parse(stdout).files;
        expect(job.verdict).toBe('pass');
        expect(job.members).toHaveLength(1);
        expect(job.checks.map((check: { check: string }) => check.check)).toEqual(expect.arrayContaining(['bending', 'shear', 'bearing', 'final']));
    });
});
