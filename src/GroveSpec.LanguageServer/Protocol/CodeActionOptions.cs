namespace GroveSpec.LanguageServer.Protocol;

/// <summary>Which fixes there are.</summary>
internal sealed record CodeActionOptions(string[]? CodeActionKinds = null, bool? ResolveProvider = null);
