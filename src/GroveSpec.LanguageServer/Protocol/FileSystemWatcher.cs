namespace GroveSpec.LanguageServer.Protocol;

/// <summary>One pattern of files.</summary>
internal sealed record FileSystemWatcher(string GlobPattern);
