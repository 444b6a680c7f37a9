using System.Text.Json;

namespace GroveSpec.LanguageServer.Protocol;

/// <summary>One finding.</summary>
internal sealed record Diagnostic(
    Range Range,
    string Message,
    int? Severity = null,
    JsonElement? Code = null,
    CodeDescription? CodeDescription = null,
    string? Source = null,
    int[]? Tags = null,
    DiagnosticRelatedInformation[]? RelatedInformation = null);
