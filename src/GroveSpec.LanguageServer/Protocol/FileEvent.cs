namespace GroveSpec.LanguageServer.Protocol;

/// <summary>One file that was changed on the disk.</summary>
internal sealed record FileEvent(string Uri, int Type);
