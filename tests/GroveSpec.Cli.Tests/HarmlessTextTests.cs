using System.Globalization;
using System.Text;
using CsCheck;
using GroveSpec.Cli.Reports;
using GroveSpec.Cli.Terminals;
using GroveSpec.Syntax.Text;

namespace GroveSpec.Cli.Tests;

public sealed class HarmlessTextTests
{
    private static readonly string[] Parts = ["\u001b[31m", "\u202e", "\u2066", "e\u0301\u0301\u0301\u0301\u0301", "\r", "\u009b", "\u2028", "漢字", "😀", "\t", "a", " "];

    private static readonly Gen<string> AnyText = Gen.OneOf(
        Gen.String,
        Gen.Char['\0', '\uFFFF'].Array[0, 60].Select(units => new string(units)),
        Gen.Int[0, Parts.Length - 1].Array[0, 20].Select(chosen => string.Concat(chosen.Select(one => Parts[one]))));

    [Fact]
    public void Nothing_that_moves_turns_or_hides_is_left() => AnyText.Sample(text =>
    {
        var shown = HarmlessText.OneLine(text);
        return shown.EnumerateRunes().All(rune => Rune.GetUnicodeCategory(rune) is not
            (UnicodeCategory.Control or UnicodeCategory.Format or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator or UnicodeCategory.PrivateUse));
    });

    [Fact]
    public void Plain_text_stays_as_it_is()
    {
        const string Plain = "trunk A at 12, -3 mm: größer als 漢字 😀 ≥ 70 %";
        Assert.Equal(Plain, HarmlessText.OneLine(Plain));
    }

    [Theory]
    [InlineData("\u001b[2J", "<U+001B>[2J")]
    [InlineData("a\nb\tc\r", "a<line end>b<tab>c<return>")]
    [InlineData("\u202eevil", "<U+202E>evil")]
    public void What_does_harm_is_written_as_its_code(string text, string shown) => Assert.Equal(shown, HarmlessText.OneLine(text));

    [Fact]
    public void A_byte_that_is_no_text_is_written_as_its_number()
    {
        Assert.Equal("a<9F>b", HarmlessText.OneLine("a\uDC9Fb"));
        Assert.Equal("<U+D83D>", HarmlessText.OneLine("\uD83D"));
    }

    [Fact]
    public void Marks_do_not_pile_up() => Assert.Equal("a\u0301\u0301\u0301", HarmlessText.OneLine("a" + new string('\u0301', 5000)));

    [Fact]
    public void A_shortened_text_keeps_both_ends_and_whole_characters() => Gen.Select(AnyText, Gen.Int[2, 40]).Sample((text, most) =>
    {
        var shortened = HarmlessText.Shorten(text, most);
        Assert.True(shortened.Length <= most || shortened == text);
        Assert.True(text.Length > most || shortened == text);
    });

    [Fact]
    public void A_mark_is_as_wide_as_the_line_it_stands_under() => Gen.Select(AnyText, Gen.Int[0, 80], Gen.Int[0, 30], Gen.Int[20, 100]).Sample((text, start, length, width) =>
    {
        var source = SourceText.FromText(text);
        var span = new TextSpan(Math.Min(start, text.Length), Math.Min(length, text.Length - Math.Min(start, text.Length)));
        var excerpt = SourceExcerpt.Of(source, span, width);
        Assert.DoesNotContain('\n', excerpt.Line);
        Assert.True(excerpt.Line.EnumerateRunes().Sum(HarmlessText.CellsOf) <= width, excerpt.Line);
        Assert.True(excerpt.Mark.Length <= width);
        Assert.Matches("^ *~*$", excerpt.Mark);
    });

    [Fact]
    public void A_line_of_ten_million_characters_is_shown_around_the_place()
    {
        var source = SourceText.FromText(new string('x', 5_000_000) + "here" + new string('y', 5_000_000));
        var excerpt = SourceExcerpt.Of(source, new TextSpan(5_000_000, 4), 60);
        Assert.Contains("here", excerpt.Line, StringComparison.Ordinal);
        Assert.Equal(excerpt.Line.IndexOf("here", StringComparison.Ordinal), excerpt.Mark.IndexOf("~~~~", StringComparison.Ordinal));
    }
}
