using GroveSpec.LanguageServer.Protocol;

namespace GroveSpec.LanguageServer.Features.Drawings;

/// <summary>Where a trunk, or in the view from the front its top, was let go, in the coordinates of the picture.</summary>
internal sealed record DragParams(TextDocumentIdentifier TextDocument, int Version, string View, string Trunk, double X, double Y);
