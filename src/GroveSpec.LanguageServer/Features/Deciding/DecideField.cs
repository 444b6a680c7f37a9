namespace GroveSpec.LanguageServer.Features.Deciding;

/// <summary>Something that a question asks for: as it was answered or as is usual, what can be written there, and why it was not understood.</summary>
internal sealed record DecideField(string Name, string Label, string Value, string Hint, string? Trouble);
