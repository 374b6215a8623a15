import { URI, UriUtils } from 'langium';
import { DiagnosticSeverity, type Diagnostic, type Location, type Range } from 'vscode-languageserver';
import type { TextDocument } from 'vscode-languageserver-textdocument';
import type { Finding, Severity, SourceRef } from '../../../language/src/model.js';
import type { Computed } from './computed-documents.js';

const severities: Readonly<Record<Severity, DiagnosticSeverity>> = {
    error: DiagnosticSeverity.Error,
    warning: DiagnosticSeverity.Warning,
    hazard: DiagnosticSeverity.Warning,
    info: DiagnosticSeverity.Information
};

/** An editor that is sent thousands shows none of them well. */
const most = 500;

export function diagnosticsOf({ text, results }: Computed): Diagnostic[] {
    return results.findings.slice(0, most).map(finding => finding.source.file === results.file ? diagnosticOf(finding, text) : elsewhere(finding, text));
}

/** Each with where more is written about its code, where the editor says how that is found. */
export function documented(diagnostics: readonly Diagnostic[], documentation: string | undefined): Diagnostic[] {
    return diagnostics.map(diagnostic => documentation === undefined || typeof diagnostic.code !== 'string' ? diagnostic
        : { ...diagnostic, codeDescription: { href: documentation.replace('{code}', diagnostic.code) } });
}

export function diagnosticOf(finding: Finding, text: TextDocument): Diagnostic {
    return {
        ...inWords(finding),
        range: rangeOf(finding.source, text),
        relatedInformation: finding.related?.map(({ message, source }) => (
            { message, location: source.file === finding.source.file ? { uri: text.uri, range: rangeOf(source, text) } : placeIn(source, text) }
        ))
    };
}

/** What is wrong in an included file stands where it is included, with the place as related. */
function elsewhere(finding: Finding, text: TextDocument): Diagnostic {
    const { file, line } = finding.source;
    return {
        ...inWords(finding),
        message: `${file} line ${line}: ${finding.message}`,
        range: includeOf(file, text),
        relatedInformation: [{ message: finding.message, location: placeIn(finding.source, text) }]
    };
}

function inWords({ severity, code, message }: Finding): Omit<Diagnostic, 'range'> {
    return { severity: severities[severity], code, source: 'padstone', message };
}

/** The line that includes a file, or the first that includes any, for a file that another one includes. */
function includeOf(file: string, text: TextDocument): Range {
    const includes = [...text.getText().matchAll(/^[ \t]*include[ \t]+"([^"\n]*)"/gm)];
    const found = includes.find(([, path]) => path?.replace(/^\.\//, '') === file) ?? includes[0];
    const start = found?.index ?? 0;
    return { start: text.positionAt(start), end: text.positionAt(start + (found?.[0].length ?? 0)) };
}

/** Lines and columns alone are known of a text that is not at hand. */
function placeIn({ file, line, column, start, end }: SourceRef, text: TextDocument): Location {
    const from = { line: line - 1, character: column - 1 };
    const uri = UriUtils.resolvePath(UriUtils.dirname(URI.parse(text.uri)), file).toString();
    return { uri, range: { start: from, end: { ...from, character: from.character + end - start } } };
}

export function rangeOf({ start, end }: SourceRef, text: TextDocument): Range {
    return { start: text.positionAt(start), end: text.positionAt(end) };
}
