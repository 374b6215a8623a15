import { InvalidArgumentError } from 'commander';
import { expandFiles } from '../files.js';
import { tell } from '../tell.js';

/** One part of a run that a pipeline shares out among machines. */
export interface Shard {
    /** From 1. */
    readonly index: number;
    readonly of: number;
}

/** @throws InvalidArgumentError */
export function shardOf(text: string): Shard {
    const [, index = '', of = ''] = /^(\d+)\/(\d+)$/.exec(text) ?? [];
    const shard = { index: Number(index), of: Number(of) };
    if (shard.index < 1 || shard.index > shard.of) {
        throw new InvalidArgumentError('it is written 1/4, 2/4 and so on.');
    }
    return shard;
}

/** The files of the shard, in turn, so that each machine gets some of each folder; and how many patterns match nothing. */
export function filesOf(patterns: readonly string[], shard: Shard | undefined): { readonly files: readonly string[]; readonly lost: number } {
    const { files, unmatched } = expandFiles(patterns);
    unmatched.forEach(pattern => tell(`no file is called ${pattern}`));
    return { files: shard === undefined ? files : files.filter((_, i) => i % shard.of === shard.index - 1), lost: unmatched.length };
}
