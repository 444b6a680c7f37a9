using GroveSpec.Syntax.Parsing;
using GroveSpec.Syntax.Printing;
using GroveSpec.Syntax.Text;
using GroveSpec.Syntax.Tree;
using Xunit;

namespace GroveSpec.Fuzz.Tests;

public sealed class TidyFilesTests
{
    private const int Files = 10_000;
    private const int FirstSeed = 4_000_000;

    [Fact]
    public void Ten_thousand_generated_files_are_read_without_a_problem_and_stay_the_same_in_meaning()
    {
        Parallel.For(FirstSeed, FirstSeed + Files, seed =>
        {
            var content = GeneratedFile.Of(seed);
            try
            {
                var text = SourceText.FromText(content);
                Assert.Empty(GroveParser.Parse(text).Problems);
                AssertTidy(text);
            }
            catch (Exception exception)
            {
                throw new InvalidOperationException($"Seed {seed}:\n{content}", exception);
            }
        });
    }

    [Fact]
    public void Every_sample_keeps_its_comments_and_its_meaning()
    {
        foreach (var path in Repository.Samples)
        {
            var text = SourceText.FromBytes(File.ReadAllBytes(path));
            AssertTidy(text);
        }

        AssertTidy(SourceText.FromText(EveryStatement.Text));
    }

    /// <summary>Tidying twice is tidying once, comments stay in order, and the tree says the same.</summary>
    internal static void AssertTidy(SourceText text)
    {
        var before = GroveParser.Parse(text);
        var tidied = Tidy.Format(before);
        var after = GroveParser.Parse(SourceText.FromText(tidied));
        Assert.Equal(tidied, Tidy.Format(after));
        Assert.Equal(TreeOutline.Comments(before), TreeOutline.Comments(after));
        AssertSame(TreeOutline.Meaning(before), TreeOutline.Meaning(after));
        Assert.Equal(BlankLines(before), BlankLines(after));
        Assert.True(tidied.Length == 0 || tidied[^1] is '\n' or '\r');
    }

    private static int BlankLines(SyntaxTree tree) =>
        tree.Statements.Count(statement => statement is Statement.Empty && tree.Tokens.AsSpan(statement.FirstToken, statement.TokenCount) is [.., { Kind: TokenKind.LineEnd }] line && !line.ToArray().Any(static token => token.Kind == TokenKind.Comment));

    private static void AssertSame(IReadOnlyList<string> before, IReadOnlyList<string> after)
    {
        Assert.Equal(before.Count, after.Count);
        for (var index = 0; index < before.Count; index++)
        {
            // A unit that was left out is written by the tidy form.
            if (before[index] == "unit ?" && after[index] is "unit mm" or "unit deg" or "unit C" or "unit %")
            {
                continue;
            }

            Assert.Equal(before[index], after[index]);
        }
    }
}
