using System.Collections.Immutable;
using GroveSpec.Syntax.Text;

namespace GroveSpec.Editing.Explaining;

/// <summary>What is known of a place. Its words are plain text that may come from the file: whoever shows it escapes it.</summary>
/// <param name="Span">The word that it is about.</param>
/// <param name="Title">What stands there, such as "Trunk B".</param>
/// <param name="Lines">What is known, a line each.</param>
/// <param name="Picture">A small drawing of it as a whole SVG document; null where there is none.</param>
public sealed record Explanation(TextSpan Span, string Title, ImmutableArray<string> Lines, string? Picture = null);
