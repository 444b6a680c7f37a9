namespace GroveSpec.LanguageServer.Protocol;

/// <summary>For which findings, and which kinds of fixes.</summary>
internal sealed record CodeActionContext(Diagnostic[]? Diagnostics = null, string[]? Only = null);
