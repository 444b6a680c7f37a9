namespace GroveSpec.LanguageServer.Protocol;

/// <summary>One part of the settings that is asked for.</summary>
internal sealed record ConfigurationItem(string? ScopeUri = null, string? Section = null);
