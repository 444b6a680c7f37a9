namespace GroveSpec.LanguageServer.Protocol;

/// <summary>What comes with a save.</summary>
internal sealed record SaveOptions(bool? IncludeText = null);
