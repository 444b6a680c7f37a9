namespace GroveSpec.LanguageServer.Protocol;

/// <summary>The server's name and version.</summary>
internal sealed record ServerInfo(string Name, string? Version = null);
