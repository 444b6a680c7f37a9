namespace GroveSpec.LanguageServer.Protocol;

/// <summary>Whether the editor asks for diagnostics again when told to.</summary>
internal sealed record DiagnosticWorkspaceClientCapabilities(bool? RefreshSupport = null);
