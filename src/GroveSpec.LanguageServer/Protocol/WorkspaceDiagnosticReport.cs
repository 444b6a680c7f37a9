namespace GroveSpec.LanguageServer.Protocol;

/// <summary>The findings of the workspace.</summary>
internal sealed record WorkspaceDiagnosticReport(WorkspaceDocumentDiagnosticReport[] Items);
