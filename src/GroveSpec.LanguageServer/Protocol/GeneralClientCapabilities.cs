namespace GroveSpec.LanguageServer.Protocol;

/// <summary>What holds for all.</summary>
internal sealed record GeneralClientCapabilities(string[]? PositionEncodings = null);
