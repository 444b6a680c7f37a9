namespace GroveSpec.LanguageServer.Protocol;

/// <summary>How the editor completes.</summary>
internal sealed record CompletionClientCapabilities(ClientCompletionItemOptions? CompletionItem = null);
