/** A git repository of a test's own, made by git itself. */
import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { padstone, type Run } from './run.js';

const identity = ['-c', 'user.name=Reviewer', '-c', 'user.email=reviewer@localhost', '-c', 'commit.gpgsign=false', '-c', 'init.defaultBranch=main', '-c', 'protocol.file.allow=always'];

export class TestRepository {
    readonly folder = mkdtempSync(join(tmpdir(), 'padstone-git-'));

    git(...args: string[]): string {
        return execFileSync('git', [...identity, ...args], { cwd: this.folder, encoding: 'utf8', stdio: ['ignore', 'pipe', 'pipe'] });
    }

    write(file: string, content: string | Uint8Array): void {
        mkdirSync(dirname(join(this.folder, file)), { recursive: true });
        writeFileSync(join(this.folder, file), content);
    }

    commit(message: string): void {
        this.git('add', '-A');
        this.git('commit', '-q', '-m', message);
    }

    padstone(args: readonly string[], cwd = '.'): Promise<Run> {
        return padstone(args, { cwd: join(this.folder, cwd) });
    }

    remove(): void {
        rmSync(this.folder, { recursive: true });
    }
}
