using System.Text.Json;
using GroveSpec.Editing.Notes;
using GroveSpec.LanguageServer.Protocol;
using GroveSpec.LanguageServer.Sessions;

namespace GroveSpec.LanguageServer.Features.CodeLenses;

/// <summary>Puts notes above lines.</summary>
internal static class CodeLensAnswer
{
    /// <summary>
    /// The notes of a document. Their command is empty, for what a click does is the editor's: a note about a name has the name's place
    /// as its data, by which the editor can ask where that name stands.
    /// </summary>
    /// <param name="document">The document.</param>
    /// <returns>The notes; none where the grower has turned them off.</returns>
    public static CodeLens[] Of(OpenDocument document) => !document.Settings.ShowsLenses ? [] :
        [.. HeadNotes.Of(document.Assessment).Select(note => new CodeLens(document.Positions.RangeOf(note.Span), new(note.Text, ""), PlaceOf(document, note)))];

    private static JsonElement? PlaceOf(OpenDocument document, LineNote note) =>
        note.Name is { } name ? JsonSerializer.SerializeToElement(document.Positions.RangeOf(name).Start, ProtocolContext.Default.Position) : null;
}
