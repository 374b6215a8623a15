import type { IForbiddenRuleType } from 'dependency-cruiser';

/** Parts of the server that do the engineering. */
const engineering = '^server/src/(analysis|checks|hazards|assemble)/';
/** Parts that show its results. */
const views = '^server/src/(sheet|lsp|command|json)/';
const test = '\\.test\\.tsx?$|^tests/';
/** The only places that may touch files and the process. */
const entries = '^server/src/main\\.node\\.ts$|^server/src/command/|^client/src/extension\\.node\\.ts$';

/** Who may import whom; the house's plan in rules. */
export const rules: IForbiddenRuleType[] = [
    {
        name: 'language-stands-alone',
        from: { path: '^language/', pathNot: test },
        to: { path: '^(server|client)/' }
    },
    {
        name: 'catalog-and-analysis-know-no-check-and-no-view',
        from: { path: '^server/src/(catalog|analysis)/', pathNot: test },
        to: { path: `^server/src/(checks|hazards|assemble|sheet|lsp|command|json)/|^server/src/(compute|summary|main\\.\\w+)\\.ts$|^client/` }
    },
    {
        name: 'checks-read-actions-and-tables-only',
        from: { path: '^server/src/checks/', pathNot: test },
        to: { path: `${views}|^server/src/(hazards|assemble)/|^server/src/(compute|summary|main\\.\\w+)\\.ts$|^client/` }
    },
    {
        name: 'views-compute-no-engineering',
        from: { path: views, pathNot: test },
        to: { path: engineering, dependencyTypesNot: ['type-only'] }
    },
    {
        name: 'views-do-not-know-each-other',
        comment: 'Save what they share: numbers and formulas as printed, and the sheet itself.',
        from: { path: '^server/src/(lsp|command|json)/', pathNot: test },
        to: { path: '^server/src/(sheet|lsp|command)/', pathNot: '^server/src/$1/|^server/src/sheet/(index|numbers|prose|plain-math|(markdown|pdf)/index)\\.tsx?$' }
    },
    {
        name: 'sheet-knows-no-editor-and-no-command',
        from: { path: '^server/src/sheet/', pathNot: test },
        to: { path: '^server/src/(lsp|command|json)/' }
    },
    {
        name: 'client-knows-the-protocol-only',
        from: { path: '^client/', pathNot: test },
        to: { path: '^(server|language)/', pathNot: '^server/src/protocol\\.ts$' }
    },
    {
        name: 'platform-in-entries-only',
        comment: 'Everything else runs in a web worker too.',
        from: { path: '^(language|server|client)/', pathNot: `${test}|${entries}` },
        to: { dependencyTypes: ['core'] }
    },
    {
        name: 'no-circle-between-folders',
        comment: 'Within a folder, files may call each other back: an expression holds names, and a name an expression.',
        from: { path: '^((?:language|server|client)/.+)/[^/]+$' },
        to: { circular: true, via: { pathNot: '^$1/[^/]+$' }, viaOnly: { dependencyTypesNot: ['type-only'] } }
    },
    {
        name: 'no-undeclared-package',
        from: { path: '^(language|server|client)/', pathNot: test },
        to: { dependencyTypes: ['npm-dev', 'npm-no-pkg', 'unknown'], dependencyTypesNot: ['type-only'], pathNot: '^vscode$' }
    }
];
