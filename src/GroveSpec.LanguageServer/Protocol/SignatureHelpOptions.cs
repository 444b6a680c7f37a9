namespace GroveSpec.LanguageServer.Protocol;

/// <summary>When help with a statement is offered.</summary>
internal sealed record SignatureHelpOptions(string[]? TriggerCharacters = null, string[]? RetriggerCharacters = null);
