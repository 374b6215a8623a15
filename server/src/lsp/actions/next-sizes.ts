/** A member that fails: the next sizes with which none of its checks does, each by the whole calculation with it. */
import { delayNextTick, type LangiumDocument } from 'langium';
import type { LangiumSharedServices } from 'langium/lsp';
import * as ast from '../../../../language/src/generated/ast.js';
import { rolledNames } from '../../catalog/rolled-sections.js';
import { sawnSizes } from '../../catalog/tables/sawn-sizes.js';
import { percentUp } from '../../sheet/numbers.js';
import { memberSummaries } from '../../summary.js';
import { computeDocument } from '../compute-document.js';
import type { Computed } from '../computed-documents.js';
import type { IncludedFiles } from '../included-files.js';
import type { Mending } from './place.js';

/** So many are offered, and so many tried. */
const [offered, tried] = [3, 10];

export class NextSizes {
    /** Of one text each is worked out once, however often the editor asks. */
    private readonly known = new WeakMap<Computed, Map<string, Promise<readonly Mending[]>>>();

    constructor(private readonly shared: () => LangiumSharedServices, private readonly included: IncludedFiles) { }

    /** @param isCancelled asked before each size */
    of(document: LangiumDocument, computed: Computed, member: string, isCancelled: () => boolean): Promise<readonly Mending[]> {
        const own = this.known.get(computed) ?? new Map<string, Promise<readonly Mending[]>>();
        this.known.set(computed, own);
        const found = own.get(member) ?? this.find(document, computed, member, isCancelled);
        own.set(member, found);
        void found.then(() => { if (isCancelled()) own.delete(member); });
        return found;
    }

    private async find(document: LangiumDocument, { text, results }: Computed, name: string, isCancelled: () => boolean): Promise<readonly Mending[]> {
        const root = document.parseResult.value;
        const member = ast.isCalculation(root) ? root.declarations.filter(ast.isMember).find(one => one.name === name) : undefined;
        const section = member?.statements.find(one => ast.isSectionStatement(one) || ast.isPlies(one));
        const node = section && (section.size ?? (ast.isSectionStatement(section) ? section.rolled : undefined));
        const now = results.members.find(one => one.name === name);
        if (!node?.$cstNode || !now) {
            return [];
        }
        const { offset, end } = node.$cstNode;
        const sizes = ast.isRolled(node) ? largerRolled(`${node.series} ${node.designation}`)
            : largerSawn(ast.isPlies(section) ? now.breadth / section.count : now.breadth, now.depth);
        const whole = text.getText();
        const mendings: Mending[] = [];
        for (const size of sizes.slice(0, tried)) {
            await delayNextTick();
            if (isCancelled() || mendings.length >= offered) {
                break;
            }
            const other = this.shared().workspace.LangiumDocumentFactory.fromString(whole.slice(0, offset) + size + whole.slice(end), document.uri);
            const [worst] = memberSummaries((await computeDocument(other, this.included)).results).find(one => one.name === name)?.checks ?? [];
            if (worst?.pass) {
                mendings.push({ title: `Make it ${size}: ${worst.check} ${percentUp(worst.utilisation)}`, at: offset, until: end, text: size });
            }
        }
        return mendings;
    }
}

/** The smallest first; none is thinner or less deep. */
function largerSawn(breadth: number, depth: number): readonly string[] {
    return sawnSizes.filter(size => size.breadth >= breadth && size.depth >= depth && size.breadth * size.depth > breadth * depth)
        .sort((a, b) => a.breadth * a.depth - b.breadth * b.depth || b.depth - a.depth).map(size => `${size.breadth} x ${size.depth} mm`);
}

/** Of the same series, in the order of EN 10365. */
function largerRolled(designation: string): readonly string[] {
    const at = rolledNames.indexOf(designation);
    const [series] = designation.split(' ');
    return at < 0 ? [] : rolledNames.slice(at + 1).filter(name => name.startsWith(`${series} `));
}
