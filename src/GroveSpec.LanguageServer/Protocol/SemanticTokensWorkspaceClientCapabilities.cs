namespace GroveSpec.LanguageServer.Protocol;

/// <summary>Whether the editor asks for tokens again when told to.</summary>
internal sealed record SemanticTokensWorkspaceClientCapabilities(bool? RefreshSupport = null);
