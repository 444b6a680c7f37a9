using GroveSpec.LanguageServer.Protocol;

namespace GroveSpec.LanguageServer.Features.Drawings;

/// <summary>Where the middle of a task's mark was let go, from the left of the timeline in the coordinates of the picture.</summary>
internal sealed record TaskDragParams(TextDocumentIdentifier TextDocument, int Version, string Task, double X);
