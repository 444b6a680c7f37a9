namespace GroveSpec.LanguageServer.Protocol;

/// <summary>How the editor shows what is under the pointer.</summary>
internal sealed record HoverClientCapabilities(string[]? ContentFormat = null);
