namespace GroveSpec.LanguageServer.Protocol;

/// <summary>How the editor takes edits.</summary>
internal sealed record WorkspaceEditClientCapabilities(bool? DocumentChanges = null);
