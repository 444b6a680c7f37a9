namespace GroveSpec.LanguageServer.Protocol;

/// <summary>How findings can be asked for.</summary>
internal sealed record DiagnosticOptions(bool InterFileDependencies, bool WorkspaceDiagnostics, string? Identifier = null, bool? WorkDoneProgress = null);
