namespace GroveSpec.LanguageServer.Protocol;

/// <summary>When completion is offered.</summary>
internal sealed record CompletionOptions(string[]? TriggerCharacters = null, bool? ResolveProvider = null);
