namespace GroveSpec.LanguageServer.Protocol;

/// <summary>Whether the editor tells of changed settings when asked.</summary>
internal sealed record DidChangeConfigurationClientCapabilities(bool? DynamicRegistration = null);
