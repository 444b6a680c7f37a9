using System.Collections.Immutable;
using GroveSpec.Syntax.Text;

namespace GroveSpec.Editing.Deciding;

/// <summary>One choice.</summary>
/// <param name="Title">It, in a few words.</param>
/// <param name="Says">Why, and what it comes to, in sentences.</param>
/// <param name="Picture">Its own picture, as a whole SVG document; null where the picture of all shows it.</param>
/// <param name="Edits">The edits that make it so; none where it is so already or cannot be written.</param>
/// <param name="Deed">What writing it does, in a few words, such as "Write this front"; why it cannot be written, in a sentence, where there are no edits.</param>
public sealed record DecisionWay(string Title, ImmutableArray<string> Says, string? Picture, ImmutableArray<TextEdit> Edits, string Deed);
