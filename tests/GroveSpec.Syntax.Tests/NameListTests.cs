using CsCheck;
using GroveSpec.Syntax.Parsing;
using GroveSpec.Syntax.Text;
using GroveSpec.Syntax.Tree;
using Xunit;

namespace GroveSpec.Syntax.Tests;

public sealed class NameListTests
{
    [Theory]
    [InlineData("", "")]
    [InlineData(" , ,", "")]
    [InlineData("A,B", "A|B")]
    [InlineData(" A ,\tB  C\n", "A|B|C")]
    [InlineData("B A B", "B|A")]
    [InlineData("a A", "a|A")]

    // A comma of another script is no comma of the language, but part of a name.
    [InlineData("松，梅,竹、柏", "松，梅|竹、柏")]

    // As two characters and as one it is the same name.
    [InlineData("e\u0301le,\u00E9le", "\u00E9le")]
    public void Names_are_parted_by_commas_and_blanks_and_told_once(string written, string expected) =>
        Assert.Equal(expected, string.Join('|', NameList.Read(written)));

    [Fact]
    public void It_reads_names_as_a_statement_does() =>
        Gen.Char["Ab7-_'é，\u0301木, "].Array[1, 12].Sample(characters =>
        {
            var written = new string(characters);
            var read = NameList.Read(written);

            // What is no name in the language cannot be held against it.
            if (GroveParser.Parse(SourceText.FromText($"accept touching {written} because \"x\"\n")) is { Problems.IsEmpty: true } tree)
            {
                var accept = (Statement.Accept)Assert.Single(tree.Statements);
                Assert.Equal(accept.Trunks.Select(name => NameForm.Of(name.Text)).Distinct(StringComparer.Ordinal), read);
            }
        });
}
