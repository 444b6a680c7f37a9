using GroveSpec.Syntax.Parsing;
using GroveSpec.Syntax.Printing;
using GroveSpec.Syntax.Text;
using Xunit;

namespace GroveSpec.Syntax.Tests;

public sealed class TidyTests
{
    [Fact]
    public void Trunks_stand_in_columns_and_every_number_has_its_unit() => Check(
        """
        trunk A at -68,-31 diameter 33mm   height 260 role windward raised 2014
        trunk B   at 22 , 18 mm girth 88 height 410 mm, role main lean 7 toward 65
        # between
        trunk G diameter 9 mm height 170 mm role lee planned spring 2028   # later
        """,
        """
        trunk A   at -68, -31 mm   diameter 33 mm   height 260 mm   role windward   raised 2014
        trunk B   at 22, 18 mm     girth 88 mm      height 410 mm   role main       lean 7 deg toward 65 deg
        # between
        trunk G                    diameter 9 mm    height 170 mm   role lee        planned spring 2028   # later

        """);

    [Fact]
    public void The_head_has_one_column_behind_its_words() => Check(
        """
        planting "Salt Bank"   # a
        habit group # b
        container slab ( -230 , -90 ) (1,2) (3,4) , 22 deep
        site latitude 54.3 N,zone 8b , last frost 2 May
        """,
        """
        planting  "Salt Bank"   # a
        habit     group         # b
        container slab (-230,-90) (1,2) (3,4) mm, 22 mm deep
        site      latitude 54.3 N, zone 8b, last frost 2 May

        """);

    [Fact]
    public void A_zone_is_one_word_even_one_that_there_is_not() => Check(
        """
        site latitude 43.8 N,  zone 7b-0, last frost 28 April
        profile larix-x {
          hardiness 4q to 9b-1 source "nobody"
        }
        """,
        """
        site      latitude 43.8 N, zone 7b-0, last frost 28 April
        profile larix-x {
          hardiness  4q to 9b-1 source "nobody"
        }

        """);

    [Fact]
    public void A_block_on_one_line_stays_on_one_line() => Check(
        """
        role windward {form stout vigour restrain,aim diameter 38 by 2031}
        role main { vigour push }
        measured 2026-10-30 { A height 258 }
        """,
        """
        role windward { form stout  vigour restrain  aim diameter 38 mm by 2031 }
        role main     {             vigour push }
        measured 2026-10-30 { A   height 258 mm }

        """);

    [Fact]
    public void A_block_of_several_lines_has_a_row_a_line() => Check(
        """
        role main
        { form slender   # thin
        
          # note
             vigour push }
        measured 2026-10-30 {   # wet
        A diameter 33.1 height 258
          B girth 89 mm height 408 mm }
        """,
        """
        role main {
          form slender   # thin

          # note
          vigour push
        }
        measured 2026-10-30 {   # wet
          A  diameter 33.1 mm   height 258 mm
          B  girth 89 mm        height 408 mm
        }

        """);

    [Fact]
    public void What_could_not_be_read_stays_as_it_was_written() => Check(
        "trunk A at 1,2\ntrunk  B   at   1,\nrole x { form\n   stuot\n",
        "trunk A   at 1, 2 mm\ntrunk  B   at   1,\nrole x { form\n   stuot\n");

    [Fact]
    public void Line_ends_are_those_of_the_first_line_and_blanks_at_ends_are_cut() => Check(
        "habit group  \r\n  # note  \n\n\n   species\tacer",
        "habit     group\r\n# note\r\n\r\n\r\nspecies   acer\r\n");

    [Theory]
    [InlineData("", "")]
    [InlineData("\n", "\n")]
    [InlineData("# a", "# a\n")]
    [InlineData("\uFEFFhabit group", "\uFEFFhabit     group\n")]
    [InlineData("habit\u00A0group", "habit     group\n")]
    public void Small_files_are_tidied_too(string source, string expected) => Check(source, expected);

    [Fact]
    public void A_very_long_name_does_not_push_the_other_lines_out()
    {
        var name = new string('n', 5000);
        Check($"trunk {name} height 1 mm\ntrunk B height 2 mm\n", $"trunk {name}   height 1 mm\ntrunk B   height 2 mm\n");
    }

    private static void Check(string source, string expected)
    {
        var tidied = Tidy.Format(GroveParser.Parse(SourceText.FromText(source)));
        Assert.Equal(expected, tidied);
        Assert.Equal(expected, Tidy.Format(GroveParser.Parse(SourceText.FromText(tidied))));
    }
}
