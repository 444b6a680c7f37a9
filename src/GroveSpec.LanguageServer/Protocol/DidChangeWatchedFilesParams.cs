namespace GroveSpec.LanguageServer.Protocol;

/// <summary>Files were changed on the disk.</summary>
internal sealed record DidChangeWatchedFilesParams(FileEvent[] Changes);
