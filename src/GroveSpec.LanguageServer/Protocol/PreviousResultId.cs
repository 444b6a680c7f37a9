namespace GroveSpec.LanguageServer.Protocol;

/// <summary>What is known of a document.</summary>
internal sealed record PreviousResultId(string Uri, string Value);
