namespace GroveSpec.LanguageServer.Protocol;

/// <summary>A line for the editor's log.</summary>
internal sealed record LogMessageParams(int Type, string Message);
