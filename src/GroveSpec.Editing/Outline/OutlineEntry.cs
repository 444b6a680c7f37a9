using System.Collections.Immutable;
using GroveSpec.Syntax.Text;

namespace GroveSpec.Editing.Outline;

/// <summary>One line of a file's outline.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Detail">What it is, in a few words; empty when the name says all.</param>
/// <param name="Kind">What it stands for.</param>
/// <param name="Span">The whole of it.</param>
/// <param name="NameSpan">Its name, within the whole.</param>
/// <param name="IsGone">Whether it is a trunk that was taken out.</param>
/// <param name="Children">What it holds.</param>
public sealed record OutlineEntry(string Name, string Detail, OutlineKind Kind, TextSpan Span, TextSpan NameSpan, bool IsGone, ImmutableArray<OutlineEntry> Children);
