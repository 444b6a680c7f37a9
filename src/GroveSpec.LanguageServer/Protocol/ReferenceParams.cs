using System.Text.Json;

namespace GroveSpec.LanguageServer.Protocol;

/// <summary>Whose uses are asked for.</summary>
internal sealed record ReferenceParams(TextDocumentIdentifier TextDocument, Position Position, ReferenceContext Context, JsonElement? WorkDoneToken = null);
