using GroveSpec.LanguageServer.Protocol;

namespace GroveSpec.LanguageServer.Features.Drawings;

/// <summary>How far a trunk is to be moved: in the plan in millimetres as the picture shows them, in the view from the front degrees of lean to the right and millimetres of height.</summary>
internal sealed record StepParams(TextDocumentIdentifier TextDocument, int Version, string View, string Trunk, double Right, double Back);
