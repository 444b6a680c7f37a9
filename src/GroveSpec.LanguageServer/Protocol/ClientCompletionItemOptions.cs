namespace GroveSpec.LanguageServer.Protocol;

/// <summary>What an item may hold.</summary>
internal sealed record ClientCompletionItemOptions(bool? SnippetSupport = null);
