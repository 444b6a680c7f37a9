namespace GroveSpec.LanguageServer.Protocol;

/// <summary>Where more is told of a check.</summary>
internal sealed record CodeDescription(string Href);
