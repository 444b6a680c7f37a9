using GroveSpec.LanguageServer.Protocol;

namespace GroveSpec.LanguageServer.Features.Deciding;

/// <summary>What is to be decided about which document: thin, fronts, nudge, ground, survey or stand, and what was written into its fields.</summary>
internal sealed record DecideParams(TextDocumentIdentifier TextDocument, string Question, Dictionary<string, string>? Answers = null);
