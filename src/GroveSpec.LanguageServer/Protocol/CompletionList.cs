namespace GroveSpec.LanguageServer.Protocol;

/// <summary>What fits at a place.</summary>
internal sealed record CompletionList(bool IsIncomplete, CompletionItem[] Items);
