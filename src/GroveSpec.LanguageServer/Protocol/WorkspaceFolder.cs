namespace GroveSpec.LanguageServer.Protocol;

/// <summary>A folder that is open in the editor.</summary>
internal sealed record WorkspaceFolder(string Uri, string Name);
