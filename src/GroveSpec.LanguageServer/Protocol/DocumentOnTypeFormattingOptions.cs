namespace GroveSpec.LanguageServer.Protocol;

/// <summary>After which characters a line is set straight.</summary>
internal sealed record DocumentOnTypeFormattingOptions(string FirstTriggerCharacter, string[]? MoreTriggerCharacter = null);
