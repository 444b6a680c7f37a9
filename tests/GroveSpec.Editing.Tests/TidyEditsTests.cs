using GroveSpec.Editing.Straightening;
using GroveSpec.Syntax.Parsing;
using GroveSpec.Syntax.Text;
using Xunit;

namespace GroveSpec.Editing.Tests;

public sealed class TidyEditsTests
{
    private const string Untidy = "planting   \"P\"\nhabit   group\nconcept   \"c\"\nviewed   near\n";

    /// <summary>An editor gives whole lines as from the start of the first to the start of the one behind the last.</summary>
    [Fact]
    public void Whole_lines_are_set_straight_without_the_line_before_and_the_line_behind()
    {
        var start = Untidy.IndexOf("habit", StringComparison.Ordinal);
        var end = Untidy.IndexOf("viewed", StringComparison.Ordinal);

        var edits = TidyEdits.Of(GroveParser.Parse(SourceText.FromText(Untidy)), TextSpan.FromBounds(start, end));

        Assert.NotEmpty(edits);
        Assert.All(edits, edit => Assert.True(edit.Place.Span.Start >= start && edit.Place.Span.End <= end));
    }

    [Fact]
    public void A_caret_at_the_start_of_a_line_or_at_the_end_of_the_last_means_that_line()
    {
        var tree = GroveParser.Parse(SourceText.FromText(Untidy.TrimEnd('\n')));
        var start = Untidy.IndexOf("habit", StringComparison.Ordinal);

        Assert.Equal(start, Assert.Single(TidyEdits.Of(tree, new TextSpan(start, 0))).Place.Span.Start);
        Assert.Equal(Untidy.IndexOf("viewed", StringComparison.Ordinal), Assert.Single(TidyEdits.Of(tree, new TextSpan(tree.Text.Length, 0))).Place.Span.Start);
    }
}
