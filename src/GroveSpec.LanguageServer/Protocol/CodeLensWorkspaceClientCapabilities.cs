namespace GroveSpec.LanguageServer.Protocol;

/// <summary>Whether the editor asks for lenses again when told to.</summary>
internal sealed record CodeLensWorkspaceClientCapabilities(bool? RefreshSupport = null);
