using System.Collections.Immutable;

namespace GroveSpec.Syntax.Tree;

/// <summary>One entry of a species profile, with its source. Entries: botanical, common, leaves, hardiness, growth, flush, bend-limit, stage, caution.</summary>
/// <param name="Keyword">Which entry.</param>
/// <param name="Values">
/// Its words, texts and quantities, in order: one text for botanical, common and caution; one word for leaves, growth and
/// flush; two zones as words for hardiness; one quantity for bend-limit; for stage the stage's word, and then twice a
/// quantity, the word before or after, and the word last frost, first frost or solstice.
/// </param>
/// <param name="Source">The text behind <c>source</c>, or the words <c>from memory</c> or <c>common practice</c> as a text; null when left out.</param>
public sealed record ProfileEntrySyntax(NameSyntax Keyword, ImmutableArray<SyntaxNode> Values, TextSyntax? Source) : SyntaxNode;
