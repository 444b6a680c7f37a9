using System.Globalization;
using GroveSpec.Syntax.Parsing;
using GroveSpec.Syntax.Printing;
using GroveSpec.Syntax.Text;
using GroveSpec.Syntax.Tree;
using Xunit;

namespace GroveSpec.Syntax.Tests;

/// <summary>The places where an edit reaches farther than its own line. That any edit gives the tree of the text is a property among the tests of chance.</summary>
public sealed class IncrementalParseTests
{
    private const string Trunks = "trunk A at 1, 2 mm\ntrunk B at 3, 4 mm\ntrunk C at 5, 6 mm\ntrunk D at 7, 8 mm\ntrunk E at 9, 9 mm\n";

    [Fact]
    public void Of_an_edit_that_moves_nothing_only_the_statement_and_the_one_before_are_read_again()
    {
        var before = Parse(Trunks);

        var after = GroveParser.Parse(SourceText.FromText(Trunks.Replace("5, 6", "6, 5", StringComparison.Ordinal)), before);

        Assert.Equal([true, false, false, true, true], after.Statements.Select((statement, index) => ReferenceEquals(statement, before.Statements[index])));
    }

    [Fact]
    public void What_an_edit_moves_is_not_read_again()
    {
        var before = Parse(Trunks);

        var after = GroveParser.Parse(SourceText.FromText(Trunks.Replace("5, 6", "55.5, 6", StringComparison.Ordinal)), before);

        var (old, moved) = ((Statement.Trunk)before.Statements[4], (Statement.Trunk)after.Statements[4]);
        Assert.Same(old.Name!.Text, moved.Name!.Text);
        Assert.Equal(old.Span.Start + 3, moved.Span.Start);
        Assert.Equal("E", after.Text.Slice(moved.Name.Span));
    }

    [Fact]
    public void A_text_that_did_not_change_keeps_its_statements()
    {
        var before = Parse(Trunks);
        var text = SourceText.FromText(Trunks);

        var after = GroveParser.Parse(text, before);

        Assert.Same(text, after.Text);
        Assert.Equal(before.Statements, after.Statements);
    }

    [Theory]
    [InlineData("role a\n# x\n", "role a\n{ rank 1 }\n", "a brace on the next line")]
    [InlineData("role a\nx\n{ rank 1 }\nhabit clump\n", "role a\n{ rank 1 }\nhabit clump\n", "a brace that comes to stand on the next line")]
    [InlineData("habit clump\n{ rank 1 }\nhabit clump\n", "role a\n{ rank 1 }\nhabit clump\n", "a statement that comes to have a block")]
    [InlineData("role a { rank 1\nhabit clump\n", "role a { rank 1\nhobit clump\n", "a line that ended a block no more")]
    [InlineData("role a {\nrank 1\n}\nhabit clump\n", "role a \nrank 1\n}\nhabit clump\n", "a block that is opened no more")]
    [InlineData("role a {\nrank 1\n}\n}\nhabit clump\n", "role a {{\nrank 1\n}\n}\nhabit clump\n", "a block that is closed later")]
    [InlineData("habit clump\rspecies acer\r", "habit clump\r\nspecies acer\r", "a line feed behind a carriage return")]
    [InlineData("habit clump\r\nspecies acer\r\n", "habit clump\rspecies acer\r\n", "a line feed taken away")]
    [InlineData("habit clump\r\nspecies acer\r\n", "habit clump\nspecies acer\r\n", "a carriage return taken away")]
    [InlineData("habit clump\nspecies acer\n", "\uFEFFhabit clump\nspecies acer\n", "a byte order mark that comes")]
    [InlineData("\uFEFFhabit clump\nspecies acer\n", "habit clump\nspecies acer\n", "a byte order mark that goes")]
    [InlineData("\uFEFFhabit clump\nspecies acer\n", "# x\n\uFEFFhabit clump\nspecies acer\n", "a byte order mark that is one no more")]
    [InlineData("# x\n\uFEFFhabit clump\nspecies acer\n", "\uFEFFhabit clump\nspecies acer\n", "a byte order mark that becomes one")]
    [InlineData("habit clump\nspecies acer\n", "\uDCFF\uDCFEhabit clump\nspecies acer\n", "UTF-16 that comes")]
    [InlineData("\uDCFF\uDCFEhabit clump\nspecies acer\n", "habit clump\nspecies acer\n", "UTF-16 that goes")]
    [InlineData("measured }\nhabit clump\n", "measured 2027-01-01 { A }\nhabit clump\n", "a block that gets its start, where a problem stood between two lines")]
    [InlineData("measured }\nhabit clump\nspecies acer\n", "measured }\nhabit clump\nspecies acre\n", "a problem between two lines before the edit")]
    [InlineData("", "habit clump\n", "a text out of nothing")]
    [InlineData("habit clump\n", "", "a text taken away")]
    [InlineData("habit clump\nspecies acer", "habit clump\nspecies acer\n", "the last line's end")]
    public void An_edit_that_reaches_farther_gives_the_tree_of_the_text(string before, string after, string what)
    {
        AssertSame(before, after, what);
        AssertSame(after, before, what);
        AssertSame(Trunks + before + Trunks, Trunks + after + Trunks, what);
        AssertSame(Trunks + after + Trunks, Trunks + before + Trunks, what);
    }

    [Theory]
    [InlineData(999)]
    [InlineData(1_000)]
    [InlineData(1_001)]
    public void Problems_are_told_up_to_the_thousandth_whichever_of_them_is_new(int problems)
    {
        var before = string.Concat(Enumerable.Range(0, problems).Select(number => string.Create(CultureInfo.InvariantCulture, $"nonsense{number} x\n")));

        AssertSame(before, "oddity x\n" + before, "one more");
        AssertSame("oddity x\n" + before, before, "one less");
        AssertSame(before, before.Replace("nonsense500 x", "habit clump", StringComparison.Ordinal), "one mended");
    }

    [Theory]
    [InlineData(119_998)]
    [InlineData(119_999)]
    [InlineData(120_000)]
    public void Lines_are_read_up_to_the_last_that_is_whichever_of_them_is_new(int lines)
    {
        var before = string.Concat(Enumerable.Repeat("#\n", lines));

        AssertSame(before, "#\n" + before, "one more");
        AssertSame("#\n" + before, before, "one less");
    }

    private static SyntaxTree Parse(string source) => GroveParser.Parse(SourceText.FromText(source));

    private static void AssertSame(string before, string after, string what)
    {
        var (expected, actual) = (Parse(after), GroveParser.Parse(SourceText.FromText(after), Parse(before)));
        Assert.True(after == TreeText.Of(actual), what);
        Assert.True(expected.Tokens.AsSpan().SequenceEqual(actual.Tokens.AsSpan()), what);
        Assert.Equal(expected.Problems, actual.Problems);
        Assert.Equal(Shown.Statements(expected), Shown.Statements(actual));
        Assert.Equal(expected.Statements.Select(Place), actual.Statements.Select(Place));
    }

    private static (TextSpan Span, int FirstToken, int TokenCount) Place(Statement statement) => (statement.Span, statement.FirstToken, statement.TokenCount);
}
