using System.Text;
using GroveSpec.Syntax.Parsing;
using GroveSpec.Syntax.Printing;
using GroveSpec.Syntax.Text;
using GroveSpec.Syntax.Tree;
using Xunit;

namespace GroveSpec.Fuzz.Tests;

public sealed class MutatedFilesTests
{
    private const int Runs = 100_000;
    private const int Seed = 20260307;

    private static byte[][] Originals { get; } =
        [Encoding.UTF8.GetBytes(EveryStatement.Text), Encoding.UTF8.GetBytes(EveryStatement.Text.ReplaceLineEndings("\r\n")), .. Repository.Samples.Select(File.ReadAllBytes)];

    [Fact]
    public void A_hundred_thousand_damaged_files_have_a_tree_that_gives_their_bytes_back()
    {
        Parallel.For(0, Runs, run =>
        {
            var bytes = Mutation.Of(Originals[run % Originals.Length], new Random(Seed + run));
            try
            {
                var text = SourceText.FromBytes(bytes);
                var tree = GroveParser.Parse(text);
                AssertCovers(tree);
                var printed = TreeText.Of(tree);
                Assert.True(printed == text.Content, "The text printed back is not the text that was read.");
                Assert.True(SourceText.ToBytes(printed).AsSpan().SequenceEqual(bytes), "The bytes are not the bytes that were read.");
            }
            catch (Exception exception)
            {
                throw new InvalidOperationException($"Seed {Seed + run}, file {run % Originals.Length}:\n{Encoding.Latin1.GetString(bytes)}", exception);
            }
        });
    }

    [Fact]
    public void Damaged_files_stay_tidy_and_keep_their_comments()
    {
        Parallel.For(0, Runs / 10, run =>
        {
            var bytes = Mutation.Of(Originals[run % Originals.Length], new Random(Seed - 1 - run));
            try
            {
                TidyFilesTests.AssertTidy(SourceText.FromBytes(bytes));
            }
            catch (Exception exception)
            {
                throw new InvalidOperationException($"Seed {Seed - 1 - run}, file {run % Originals.Length}:\n{Encoding.Latin1.GetString(bytes)}", exception);
            }
        });
    }

    [Fact]
    public void The_short_way_and_the_generated_parser_make_the_same_tree()
    {
        Parallel.For(0, Runs / 10, run =>
        {
            var bytes = run % 2 == 0
                ? Encoding.UTF8.GetBytes(GeneratedFile.Of(Seed + run))
                : Mutation.Of(Originals[run % Originals.Length], new Random(Seed + (7 * run)));
            var text = SourceText.FromBytes(bytes);
            Assert.Equal(TreeOutline.WithSpans(GroveParser.Parse(text, isPlainAllowed: false)), TreeOutline.WithSpans(GroveParser.Parse(text, isPlainAllowed: true)));
        });
    }

    private static void AssertCovers(SyntaxTree tree)
    {
        var place = 0;
        foreach (var token in tree.Tokens)
        {
            Assert.True(token.Span.Start == place && token.Span.Length > 0, "Tokens leave a gap.");
            place = token.Span.End;
        }

        Assert.Equal(tree.Text.Length, place);
        var next = 0;
        foreach (var statement in tree.Statements)
        {
            Assert.True(statement.FirstToken == next && statement.TokenCount > 0, "Statements leave a token out.");
            next += statement.TokenCount;
        }

        Assert.Equal(tree.Tokens.Length, next);
        foreach (var problem in tree.Problems)
        {
            Assert.True(problem.Span.Start >= 0 && problem.Span.End <= tree.Text.Length, "A problem lies outside the text.");
            Assert.False(string.IsNullOrWhiteSpace(problem.Message));
        }

        Assert.True(tree.Problems.Length > 0 || !tree.Statements.Any(static statement => statement.IsBroken), "A broken statement without a problem.");
    }
}
