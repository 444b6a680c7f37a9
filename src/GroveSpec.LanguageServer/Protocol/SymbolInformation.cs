namespace GroveSpec.LanguageServer.Protocol;

/// <summary>One line of an outline that is no tree.</summary>
internal sealed record SymbolInformation(string Name, int Kind, Location Location, string? ContainerName = null, int[]? Tags = null);
