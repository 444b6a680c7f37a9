using System.Text.Json.Serialization;

namespace GroveSpec.LanguageServer.Protocol;

/// <summary>The findings of one document of the workspace, or that they are what they were.</summary>
internal sealed record WorkspaceDocumentDiagnosticReport(
    string Kind,
    string Uri,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.Never)] int? Version,
    string? ResultId = null,
    Diagnostic[]? Items = null);
