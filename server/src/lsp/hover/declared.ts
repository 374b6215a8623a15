import type { LangiumDocument } from 'langium';
import * as ast from '../../../../language/src/generated/ast.js';
import type { Results } from '../../results.js';
import { escape } from '../markdown.js';
import { describe } from '../meaning/things.js';
import type { WorkspaceNames } from '../names/workspace-names.js';
import type { Hovered } from './place.js';

/** Any other thing that has a name, in this file or another: how it is declared; of a load, what it comes to. */
export async function hoverDeclared(names: WorkspaceNames, document: LangiumDocument, offset: number, results: Results): Promise<Hovered | undefined> {
    const found = await names.declaredAt(document, offset);
    if (!found) {
        return undefined;
    }
    const { node, file, name } = found.declared;
    const load = ast.isLoad(node) ? results.loads.find(item => item.load.name === name) : undefined;
    const parts = [
        describe(node).text,
        load && escape(`${load.account}, ${load.duration}, ψ₀ ${load.psi[0]}, ψ₁ ${load.psi[1]}, ψ₂ ${load.psi[2]}`),
        file.document === document ? '' : escape(`in ${file.uri.split('/').at(-1) ?? ''}`)
    ];
    return { markdown: parts.filter(Boolean).join('\n\n'), source: found.at };
}
