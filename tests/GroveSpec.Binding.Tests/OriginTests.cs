using CsCheck;
using GroveSpec.Model;
using GroveSpec.Tests.Shared;
using Xunit;

namespace GroveSpec.Binding.Tests;

public sealed class OriginTests
{
    private static readonly string[] Names = ["A", "B", "~2", "A~2", "~", "~0", "A/height", "/"];

    private const string Text = """
        planting "P"
        # a line
        trunk A at 0, 0 mm height 100 mm
        trunk B at 50, 0 mm diameter 9 mm role lee
        role lee { aim height 300 mm by 2030 aim diameter 30 mm by 2030 }
        tape A to B 50 mm
        tape A to B 51 mm
        measured 2026-10-30 {
          A diameter 9 mm height 101 mm
        }
        """;

    [Fact]
    public void Changing_one_line_leaves_the_origins_of_all_others()
    {
        var before = Planted.Of(Text).Planting;
        var after = Planted.Of(Text.Replace("# a line", "concept \"new\"\n\n# longer, above all else", StringComparison.Ordinal)).Planting;
        Assert.Null(PlantingEquality.FirstDifference(before with { Concept = after.Concept }, after));
    }

    [Theory]
    [InlineData("trunk:A", "A")]
    [InlineData("trunk:A/height", "height 100 mm")]
    [InlineData("trunk:A/nothing", "A")]
    [InlineData("trunk:B/role", "role lee")]
    [InlineData("role:lee/aim~2", "aim diameter 30 mm by 2030")]
    [InlineData("reading:2026-10-30:A", "A")]
    [InlineData("reading:2026-10-30:A/height", "height 101 mm")]
    [InlineData("tape:A-B~2/distance", "51 mm")]
    [InlineData("head:planting", "\"P\"")]
    [InlineData("nothing", "")]
    [InlineData("default", "")]
    public void An_origin_is_found_where_it_was_written(string origin, string written)
    {
        var assessment = Planted.Of(Text);
        Assert.Equal(written, assessment.Tree.Text.Slice(assessment.Origins.Locate(new Origin(origin)).Span));
    }

    [Theory]
    [InlineData("trunk:A/height", "trunk A at 0, 0 mm height 100 mm")]
    [InlineData("reading:2026-10-30:A/height", "A diameter 9 mm height 101 mm")]
    [InlineData("tape:A-B~2", "tape A to B 51 mm")]
    public void The_statement_of_an_origin_is_the_whole_of_it(string origin, string written)
    {
        var assessment = Planted.Of(Text);
        Assert.Equal(written, assessment.Tree.Text.Slice(assessment.Origins.StatementOf(new Origin(origin)).Span));
    }

    [Fact]
    public void Names_that_look_like_parts_are_kept_apart() =>
        Gen.Int[0, Names.Length - 1].Select(index => Names[index]).Array[1, 6].Sample(names =>
        {
            var table = new Origins.OriginTable("f");
            var ids = names.Select(name => table.Add("trunk:" + Origins.OriginTable.Piece(name), default).Id).ToArray();
            return ids.Distinct(StringComparer.Ordinal).Count() == ids.Length;
        });

    [Theory]
    [InlineData("planting \"P\"\ntrunk A at 0, 0 mm", "planting \"P\"\ntrunk A at 0, 0 mm\none\ntwo")]
    [InlineData("planting \"P\"\ntrunk A at 0, 0 mm  # the old one\n", "planting \"P\"\ntrunk A at 0, 0 mm  # the old one\none\ntwo\n")]
    [InlineData("planting \"P\"\r\ntrunk A at 0, 0 mm # x\r\n\r\n", "planting \"P\"\r\ntrunk A at 0, 0 mm # x\r\none\r\ntwo\r\n\r\n")]
    [InlineData("planting \"P\"\r\ntrunk A at 0, 0 mm", "planting \"P\"\r\ntrunk A at 0, 0 mm\r\none\r\ntwo")]
    [InlineData("planting \"P\"\rtrunk A at 0, 0 mm", "planting \"P\"\rtrunk A at 0, 0 mm\rone\rtwo")]
    public void Lines_written_behind_a_statement_leave_its_comment_where_it_is_and_end_as_the_others_do(string text, string expected)
    {
        var assessment = Planted.Of(text);
        var edit = assessment.Origins.WriteBehind(new Origin("trunk:A/at"), "one", "two");

        Assert.Equal(0, edit.Place.Span.Length);
        Assert.Equal(expected, text.Insert(edit.Place.Span.Start, edit.NewText));
    }
}
