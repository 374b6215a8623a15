import { DiagnosticSeverity, type Diagnostic, type Range } from 'vscode-languageserver';
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
    return results.findings.slice(0, most).map(finding => diagnosticOf(finding, text));
}

export function diagnosticOf(finding: Finding, text: TextDocument): Diagnostic {
    return {
        range: rangeOf(finding.source, text),
        severity: severities[finding.severity],
        code: finding.code,
        source: 'padstone',
        message: finding.message,
        relatedInformation: finding.related?.map(({ message, source }) => ({ message, location: { uri: text.uri, range: rangeOf(source, text) } }))
    };
}

export function rangeOf({ start, end }: SourceRef, text: TextDocument): Range {
    return { start: text.positionAt(start), end: text.positionAt(end) };
}
