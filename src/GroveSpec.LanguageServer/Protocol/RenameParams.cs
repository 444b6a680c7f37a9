using System.Text.Json;

namespace GroveSpec.LanguageServer.Protocol;

/// <summary>What is to be called what.</summary>
internal sealed record RenameParams(TextDocumentIdentifier TextDocument, Position Position, string NewName, JsonElement? WorkDoneToken = null);
