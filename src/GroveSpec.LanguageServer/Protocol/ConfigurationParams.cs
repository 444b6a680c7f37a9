namespace GroveSpec.LanguageServer.Protocol;

/// <summary>Which settings are asked for.</summary>
internal sealed record ConfigurationParams(ConfigurationItem[] Items);
