namespace GroveSpec.LanguageServer.Protocol;

/// <summary>Which folders.</summary>
internal sealed record WorkspaceFoldersChangeEvent(WorkspaceFolder[] Added, WorkspaceFolder[] Removed);
