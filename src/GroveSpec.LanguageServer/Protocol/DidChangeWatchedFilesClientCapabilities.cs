namespace GroveSpec.LanguageServer.Protocol;

/// <summary>Whether the editor watches files when asked.</summary>
internal sealed record DidChangeWatchedFilesClientCapabilities(bool? DynamicRegistration = null);
