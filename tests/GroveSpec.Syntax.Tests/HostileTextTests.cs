using System.Text;
using GroveSpec.Syntax.Parsing;
using GroveSpec.Syntax.Printing;
using GroveSpec.Syntax.Text;
using Xunit;

namespace GroveSpec.Syntax.Tests;

public sealed class HostileTextTests
{
    public static TheoryData<string, byte[]> Encodings() => new()
    {
        { "empty", [] },
        { "a byte order mark alone", [0xEF, 0xBB, 0xBF] },
        { "a byte order mark before a statement", [0xEF, 0xBB, 0xBF, .. "habit group"u8] },
        { "comments alone", "# a\n#b"u8.ToArray() },
        { "no line end", "habit group"u8.ToArray() },
        { "CR alone", "habit group\rspecies acer\r"u8.ToArray() },
        { "mixed line ends", "habit group\r\nspecies acer\nhabit clump\r\r\n\n"u8.ToArray() },
        { "NUL", "habit \0group\n\0\0"u8.ToArray() },
        { "lone surrogates in UTF-8", [.. "habit "u8, 0xED, 0xA0, 0x80, .. " x"u8] },
        { "overlong", [.. "concept \""u8, 0xC0, 0x80, (byte)'"'] },
        { "UTF-16", Encoding.Unicode.GetPreamble().Concat(Encoding.Unicode.GetBytes("habit group\n")).ToArray() },
        { "UTF-16 the other way", Encoding.BigEndianUnicode.GetPreamble().Concat(Encoding.BigEndianUnicode.GetBytes("habit group\n")).ToArray() },
        { "Latin-1", Encoding.Latin1.GetBytes("planting \"Café\"\ntrunk é at 1, 2\n") },
        { "line separators", Encoding.UTF8.GetBytes("habit\u2028group\u0085x\u000Bhabit\u000Cgroup") },
        { "all bytes", Enumerable.Range(0, 256).Select(static value => (byte)value).ToArray() },
    };

    [Theory]
    [MemberData(nameof(Encodings))]
    public void Any_bytes_come_back_from_the_tree(string what, byte[] bytes)
    {
        var tree = GroveParser.Parse(SourceText.FromBytes(bytes));
        Assert.True(SourceText.ToBytes(TreeText.Of(tree)).AsSpan().SequenceEqual(bytes), what);
    }

    [Fact]
    public void A_file_in_UTF_16_is_told_once_and_what_to_do()
    {
        var bytes = Encoding.Unicode.GetPreamble().Concat(Encoding.Unicode.GetBytes("habit group\n")).ToArray();
        var problem = Assert.Single(GroveParser.Parse(SourceText.FromBytes(bytes)).Problems);
        Assert.Equal("This file is written in UTF-16; save it as UTF-8.", problem.Message);
        var tree = GroveParser.Parse(SourceText.FromBytes(bytes));
        Assert.StartsWith(tree.Text.Content, Tidy.Format(tree), StringComparison.Ordinal);
    }

    [Fact]
    public void A_byte_that_is_not_UTF_8_is_told_where_it_stands()
    {
        var tree = GroveParser.Parse(SourceText.FromBytes([.. "planting \"Caf"u8, 0xE9, .. "\""u8]));
        var problem = Assert.Single(tree.Problems);
        Assert.Equal("The byte E9 here is not UTF-8; save the file as UTF-8, or write the character anew.", problem.Message);
        Assert.Equal(new TextSpan(13, 1), problem.Span);
        Assert.False(tree.Statements[0].IsBroken);
    }

    public static TheoryData<string, string> Sizes() => new()
    {
        { "a word of ten million letters", "trunk " + new string('a', 10_000_000) },
        { "a line of ten million letters", string.Concat(Enumerable.Repeat("trunk A ", 1_250_000)) },
        { "a million lines", string.Concat(Enumerable.Repeat("habit group\n", 1_000_000)) },
        { "a million broken lines", string.Concat(Enumerable.Repeat("}}\n", 1_000_000)) },
        { "a hundred thousand braces", new string('{', 100_000) + "\nhabit group\n" },
        { "a hundred thousand braces on lines of their own", string.Concat(Enumerable.Repeat("{\n", 100_000)) },
        { "a million braces behind a role", "role a " + new string('{', 1_000_000) },
        { "a text that is never closed", "concept \"" + new string('a', 10_000_000) },
        { "a comment without a line end", "# " + new string('a', 10_000_000) },
        { "a word of twenty thousand letters", "trunk " + new string('a', 20_000) + "\n" },
        { "a number of twenty thousand digits", "trunk A height " + new string('9', 20_000) + "\n" },
    };

    [Theory]
    [MemberData(nameof(Sizes))]
    public void What_is_too_large_is_told_and_comes_back_whole(string what, string source)
    {
        var tree = GroveParser.Parse(SourceText.FromText(source));
        Assert.True(TreeText.Of(tree) == source, what);
        Assert.NotEmpty(tree.Problems);
        Assert.True(tree.Problems.Length <= 1001);
    }

    [Theory]
    [InlineData(10_000)]
    [InlineData(400)]
    public void A_long_name_and_a_long_number_are_still_read(int length)
    {
        var name = new string('n', length);
        var digits = new string('9', length);
        Assert.Equal($"(Trunk {name} [(Height {digits}mm)])", Shown.Statements($"trunk {name} height {digits} mm"));
    }

    [Fact]
    public void The_limits_are_told_in_the_message()
    {
        var lines = GroveParser.Parse(SourceText.FromText(new string('\n', 130_000)));
        Assert.Equal("The file is read up to here: no more than 120,000 lines and 4,194,304 characters are. Split it into several plantings.", Assert.Single(lines.Problems).Message);
        var line = GroveParser.Parse(SourceText.FromText(new string('a', 100_001)));
        Assert.Equal("This line has 100,001 characters and is not read: no more than 100,000 are. Write it as several lines.", Assert.Single(line.Problems).Message);
        var word = GroveParser.Parse(SourceText.FromText("trunk " + new string('a', 10_001)));
        Assert.Contains(word.Problems, static problem => problem.Message == "This word has 10,001 characters; no more than 10,000 are read.");
    }

    [Fact]
    public void Names_that_look_alike_are_compared_composed()
    {
        Assert.Equal("é", NameForm.Of("e\u0301"));
        Assert.Equal("ậ", NameForm.Of("a\u0302\u0323"));
        Assert.Equal("ậ", NameForm.Of("a\u0323\u0302"));
        Assert.Equal("й", NameForm.Of("и\u0306"));
        Assert.Equal("ή", NameForm.Of("η\u0301"));
        Assert.Equal("가각", NameForm.Of("\u1100\u1161\u1100\u1161\u11A8"));
        Assert.Equal("A-1", NameForm.Of("A-1"));
        Assert.Equal("\u0301", NameForm.Of("\u0301"));
        var stacked = "a" + string.Concat(Enumerable.Repeat("\u0316\u0301", 2500));
        Assert.Equal(5000, NameForm.Of(stacked).Length);
    }
}
