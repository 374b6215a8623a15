import { Option, type Command } from 'commander';
import { plainDisplay, type Display } from '../sheet/index.js';

const units: readonly Display['units'][] = ['si', 'imperial'];
const decimals: readonly Display['decimal'][] = ['point', 'comma'];

/** `--units` and `--decimal`, of what a person reads; JSON is always SI with points. */
export function addDisplay(command: Command): Command {
    return command
        .addOption(new Option('--units <units>', 'of what is printed for a person').choices(units).default(plainDisplay.units))
        .addOption(new Option('--decimal <sign>', 'of what is printed for a person').choices(decimals).default(plainDisplay.decimal));
}
