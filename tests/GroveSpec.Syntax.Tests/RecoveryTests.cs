using GroveSpec.Syntax.Parsing;
using GroveSpec.Syntax.Printing;
using GroveSpec.Syntax.Text;
using GroveSpec.Syntax.Tree;
using Xunit;

namespace GroveSpec.Syntax.Tests;

public sealed class RecoveryTests
{
    [Theory]
    [InlineData("trunk A at 1, 2 mm foo 3 mm height 4 mm", "!(Trunk A [(At (PlanPoint 1 2mm)) (Height 4mm)])")]
    [InlineData("trunk A height tall diameter 3 mm", "!(Trunk A [(Thickness no 3mm)])")]
    [InlineData("trunk A hieght 12 mm diametr 3 mm", "!(Trunk A [(Height 12mm) (Thickness no 3mm)])")]
    [InlineData("trunk A at 1 2 mm height 3 mm", "!(Trunk A [(At (PlanPoint 1 2mm)) (Height 3mm)])")]
    [InlineData("trunk A diameter 1,5 mm height 3 mm", "!(Trunk A [(Height 3mm)])")]
    [InlineData("trunk at at 1, 2 mm", "!(Trunk - [(At (PlanPoint 1 2mm))])")]
    [InlineData("trunk at 1, 2 mm", "!(Trunk - [(At (PlanPoint 1 2mm))])")]
    [InlineData("trunk 1A at 1, 2 mm", "!(Trunk - [(At (PlanPoint 1 2mm))])")]
    [InlineData("trnk A at 1, 2", "!(Trunk A [(At (PlanPoint 1 2))])")]
    [InlineData("trunk A at 1, 2 trunk B at 3, 4", "!(Trunk A [(At (PlanPoint 1 2))])")]
    [InlineData("tape A B 102 mm", "!(Tape A B 102mm no)")]
    [InlineData("habit clmp", "!(Habit clump)")]
    [InlineData("habit heap", "!(Habit -)")]
    [InlineData("role lee { form stuot vigor push }", "!(Role lee [(Form stout) (Vigour push)])")]
    [InlineData("role lee { form ? vigour push }", "!(Role lee [(Vigour push)])")]
    [InlineData("task W1 wyre on B in late autmn 2026", "!(Task W1 wire - (OnTrunks [B]) [(During (Season late autumn 2026))])")]
    [InlineData("task W1 wire on B at 2027 low", "!(Task W1 wire - (OnTrunks [B]) [(Position low)])")]
    [InlineData("measured 2026-10-30 {\n A diameter 3\n B foo 4\n C height 5 mm\n}", "!(Measured (Date 2026-10-30) [(Reading A [(Thickness no 3)]) (Reading B []) (Reading C [(Height 5mm)])])")]
    [InlineData("concept \"not closed  # x  ", "!(Concept \"not closed  # x\")")]
    [InlineData("accept three-in-line A B becuase \"x\"", "!(Accept three-in-line [A B] \"x\")")]
    public void What_could_be_read_of_a_broken_statement_is_kept(string source, string expected) => Assert.Equal(expected, Shown.Statements(source));

    [Fact]
    public void One_bad_line_costs_one_statement()
    {
        foreach (var line in Corpus.Lines)
        {
            foreach (var bad in (string[])["\u0001 ?? ))", "trunk", "concept \"", "}", "%", "1e9", "role", "container slab ("])
            {
                var tree = GroveParser.Parse(SourceText.FromText($"{line}\n{bad}\n{line}\n"));
                var broken = tree.Statements.Where(static statement => statement.IsBroken).ToList();
                Assert.Single(broken);
                Assert.Equal(3, tree.Statements.Length);
                Assert.True(tree.Statements[1].IsBroken);
            }
        }
    }

    [Fact]
    public void A_block_that_nobody_closed_ends_before_the_next_statement()
    {
        const string Source = "role lee {\n  form stout\ntrunk A at 1, 2\nmeasured 2026-10-30 {\n A height 3 mm\n\nhabit group\n";
        Assert.Equal(
            "!(Role lee [(Form stout)])\n(Trunk A [(At (PlanPoint 1 2))])\n!(Measured (Date 2026-10-30) [(Reading A [(Height 3mm)])])\n(Habit group)",
            Shown.Statements(Source));
        var problems = GroveParser.Parse(SourceText.FromText(Source)).Problems;
        Assert.Equal([SyntaxProblemKind.NotClosed, SyntaxProblemKind.NotClosed], problems.Select(static problem => problem.Kind));
    }

    [Fact]
    public void Problems_stand_in_the_order_of_the_text_and_are_counted_when_they_are_too_many()
    {
        var tree = GroveParser.Parse(SourceText.FromText(string.Concat(Enumerable.Repeat("habit heap\n", 3000))));
        Assert.Equal(1001, tree.Problems.Length);
        Assert.Equal("2000 more places in this file could not be read; they are told once those above are mended.", tree.Problems[^1].Message);
        Assert.True(tree.Problems.Zip(tree.Problems.Skip(1)).All(static pair => pair.First.Span <= pair.Second.Span));
        Assert.Equal(tree.Text.Content, TreeText.Of(tree));
    }
}
