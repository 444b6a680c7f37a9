namespace GroveSpec.LanguageServer.Protocol;

/// <summary>The findings of a document, or that they are what they were.</summary>
internal sealed record DocumentDiagnosticReport(string Kind, string? ResultId = null, Diagnostic[]? Items = null);
