using GroveSpec.LanguageServer.Protocol;

namespace GroveSpec.LanguageServer.Features.Deciding;

/// <summary>A choice: in a few words, in sentences, its own picture where it has one, the edits that make it so, and what writing them does or why there are none.</summary>
internal sealed record DecideWay(string Title, string[] Says, string? Picture, TextEdit[] Edits, string Deed);
