using GroveSpec.LanguageServer.Protocol;

namespace GroveSpec.LanguageServer.Features.Drawings;

/// <summary>The edits that move a trunk or a task, what they do in a sentence, and where a trunk comes to stand in the picture; or why it is not moved.</summary>
internal sealed record DragResult(int Version, TextEdit[] Edits, string? Says = null, double? X = null, double? Y = null, string? Refusal = null);
