namespace GroveSpec.LanguageServer.Protocol;

/// <summary>Folders were added or taken away.</summary>
internal sealed record DidChangeWorkspaceFoldersParams(WorkspaceFoldersChangeEvent Event);
