namespace GroveSpec.LanguageServer.Protocol;

/// <summary>What can be renamed.</summary>
internal sealed record PrepareRenameResult(Range Range, string Placeholder);
