using GroveSpec.Syntax.Text;

namespace GroveSpec.Editing.Notes;

/// <summary>A short note that stands in or above a line without being part of the text.</summary>
/// <param name="Span">What it is about; a note in the line stands behind it.</param>
/// <param name="Text">The note.</param>
/// <param name="Telling">What it means, in a sentence.</param>
/// <param name="Name">The name whose places it counts; null for a note about something else.</param>
public sealed record LineNote(TextSpan Span, string Text, string Telling, TextSpan? Name = null);
