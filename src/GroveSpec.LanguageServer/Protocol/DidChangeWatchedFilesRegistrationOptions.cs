namespace GroveSpec.LanguageServer.Protocol;

/// <summary>Which files are to be watched.</summary>
internal sealed record DidChangeWatchedFilesRegistrationOptions(FileSystemWatcher[] Watchers);
