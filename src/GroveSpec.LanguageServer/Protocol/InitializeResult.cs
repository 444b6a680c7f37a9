namespace GroveSpec.LanguageServer.Protocol;

/// <summary>What the server says of itself.</summary>
internal sealed record InitializeResult(ServerCapabilities Capabilities, ServerInfo? ServerInfo = null);
