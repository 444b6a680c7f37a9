namespace GroveSpec.LanguageServer.Protocol;

/// <summary>What the editor may ask for later.</summary>
internal sealed record ClientCodeActionResolveOptions(string[] Properties);
