namespace GroveSpec.LanguageServer.Protocol;

/// <summary>How much is to be told.</summary>
internal sealed record SetTraceParams(string Value);
