using GroveSpec.LanguageServer.Protocol;

namespace GroveSpec.LanguageServer.Features.Drawings;

/// <summary>Which picture of which document: plan, front, timeline or wiring.</summary>
internal sealed record DrawParams(TextDocumentIdentifier TextDocument, string View);
