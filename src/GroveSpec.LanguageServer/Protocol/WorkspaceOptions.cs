namespace GroveSpec.LanguageServer.Protocol;

/// <summary>What holds for folders.</summary>
internal sealed record WorkspaceOptions(WorkspaceFoldersServerCapabilities? WorkspaceFolders = null);
