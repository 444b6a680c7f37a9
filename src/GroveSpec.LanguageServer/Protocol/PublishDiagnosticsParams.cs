namespace GroveSpec.LanguageServer.Protocol;

/// <summary>The findings of a document's text.</summary>
internal sealed record PublishDiagnosticsParams(string Uri, Diagnostic[] Diagnostics, int? Version = null);
