import type { Command } from 'commander';
import { outputSchema } from '../json/schema.js';

export function addSchema(program: Command): void {
    program.command('schema')
        .description('Print the JSON Schema of what `check --format json` prints.')
        .action(() => {
            process.stdout.write(`${JSON.stringify(outputSchema, undefined, 2)}\n`);
        });
}
