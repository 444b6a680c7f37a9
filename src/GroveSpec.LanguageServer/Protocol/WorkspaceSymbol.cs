namespace GroveSpec.LanguageServer.Protocol;

/// <summary>One thing that was found.</summary>
internal sealed record WorkspaceSymbol(string Name, int Kind, Location Location, string? ContainerName = null);
