namespace GroveSpec.LanguageServer.Protocol;

/// <summary>Whether the editor asks for hints again when told to.</summary>
internal sealed record InlayHintWorkspaceClientCapabilities(bool? RefreshSupport = null);
