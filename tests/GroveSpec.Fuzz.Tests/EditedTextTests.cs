using CsCheck;
using GroveSpec.Binding;
using GroveSpec.Binding.Use;
using GroveSpec.Checks;
using GroveSpec.Model.Quantities;
using GroveSpec.Syntax.Parsing;
using GroveSpec.Syntax.Printing;
using GroveSpec.Syntax.Text;
using GroveSpec.Syntax.Tree;
using Xunit;

namespace GroveSpec.Fuzz.Tests;

/// <summary>A tree that was made of the tree before an edit is the tree of the text.</summary>
public sealed class EditedTextTests
{
    private static readonly string[] Texts =
    [
        EveryStatement.Text,
        EveryStatement.Text.ReplaceLineEndings("\r\n"),
        EveryStatement.Text.ReplaceLineEndings("\r"),
        "\uFEFF" + EveryStatement.Text,
        "",
        .. Repository.Samples.Select(path => SourceText.FromBytes(File.ReadAllBytes(path)).Content),
    ];

    // What ends and begins lines, statements, blocks and texts, what moves what stands behind, and what cannot be read.
    private static readonly string[] Pieces =
    [
        "", "", "", "\n", "\r", "\r\n", "\n\n", "{", "}", "\n{", "{\n", "}\n", "\"", "#", " ", "\t", ",", "1", "x", "-", "%", "(", ")", "trunk", "\ntrunk Z at 1, 2 mm\n",
        "role r", "\nrole r\n", "\nrole r {\n", "profile acer\n{", "measured 2027-01-01", "task T prune on all", "in", "12 in spring 2027", "tr\u00FCnk", "\uFEFF", "\0", "\u00A0",
        "\u201C", "\u2028", "\uDCFF\uDCFE", "\uDCFF", "\U0001F332", "use \"roles.grove\"\n", "accept even-gaps because \"so\"\n", "tolerance even-gaps 9 %\n",
    ];

    private static Gen<string> Text { get; } = Gen.Frequency(
        (3, Gen.Int[0, 100_000].Select(GeneratedFile.Of)),
        (3, OneOf(Texts)),
        (2, Gen.Select(OneOf(Texts), Gen.Int[0, 100_000], Damaged)),
        (1, OneOf(Pieces).Array[0, 12].Select(string.Concat)));

    private static Gen<Edit> AnyEdit { get; } = Gen.Select(
        Gen.Frequency((1, Gen.Const(0.0)), (8, Gen.Double[0, 1]), (1, Gen.Const(1.0))),
        Gen.Frequency((4, Gen.Const(0)), (4, Gen.Int[0, 6]), (1, Gen.Int[0, 400])),
        OneOf(Pieces),
        Gen.Bool,
        (place, length, piece, isAtLine) => new Edit(place, length, piece, isAtLine));

    [Fact]
    public void It_has_the_same_statements_words_and_problems_at_the_same_places() =>
        Gen.Select(Text, AnyEdit.Array[1, 6]).Sample(
            (content, edits) =>
            {
                var tree = GroveParser.Parse(SourceText.FromText(content));
                foreach (var edit in edits)
                {
                    var text = SourceText.FromText(edit.Of(tree.Text.Content));
                    tree = GroveParser.Parse(text, tree);
                    AssertSame(GroveParser.Parse(text), tree);
                }
            },
            iter: 10_000);

    [Fact]
    public void It_says_the_same_and_the_same_is_found() =>
        Gen.Select(Text, AnyEdit.Array[1, 3]).Sample(
            (content, edits) =>
            {
                var tree = GroveParser.Parse(SourceText.FromText(content));
                foreach (var edit in edits)
                {
                    tree = GroveParser.Parse(SourceText.FromText(edit.Of(tree.Text.Content)), tree);
                }

                var (expected, actual) = (Assess(GroveParser.Parse(tree.Text)), Assess(tree));
                Assert.Equal(ModelOutline.Of(expected.Planting), ModelOutline.Of(actual.Planting));
                Assert.Equal(expected.Findings.Select(Told), actual.Findings.Select(Told));
                Assert.Equal(expected.Accepted.Select(Told), actual.Accepted.Select(Told));
            },
            iter: 2_000);

    [Fact]
    public void Every_part_of_every_statement_moves_with_a_line_put_in_before_it()
    {
        var tree = GroveParser.Parse(SourceText.FromText(EveryStatement.Text));
        var text = SourceText.FromText("# a line\n" + EveryStatement.Text);

        var moved = GroveParser.Parse(text, tree);

        AssertSame(GroveParser.Parse(text), moved);
        var outline = TreeOutline.WithSpans(moved).Split('\n').ToHashSet(StringComparer.Ordinal);
        Assert.All(
            typeof(SyntaxNode).Assembly.GetTypes().Where(type => type.IsSubclassOf(typeof(SyntaxNode)) && !type.IsAbstract && type != typeof(Statement.Unknown)),
            type => Assert.Contains(type.Name, outline));
    }

    private static Gen<string> OneOf(string[] choices) => Gen.Int[0, choices.Length - 1].Select(index => choices[index]);

    private static void AssertSame(SyntaxTree expected, SyntaxTree actual)
    {
        Assert.Same(expected.Text, actual.Text);
        Assert.Equal(expected.Text.Content, TreeText.Of(actual));
        Assert.True(expected.Tokens.AsSpan().SequenceEqual(actual.Tokens.AsSpan()), "The words differ.");
        Assert.Equal(TreeOutline.WithSpans(expected), TreeOutline.WithSpans(actual));
    }

    private static Assessment Assess(SyntaxTree tree) => Assessment.Of("edited.grove", tree, new NoFiles(), null, UnitSystem.Metric, TestContext.Current.CancellationToken);

    private static string Told(Finding finding) =>
        $"{finding.Place} {finding.Check.Name} {finding.Severity} {finding.Message} [{string.Join("; ", finding.Related)}] [{string.Join("; ", finding.Remedies.Select(remedy => $"{remedy.Title}: {string.Join(", ", remedy.Edits)}"))}]";

    private static string Damaged(string text, int seed) => SourceText.FromBytes(Mutation.Of(SourceText.ToBytes(text), new Random(seed))).Content;

    /// <summary>An edit, wherever it may fall.</summary>
    private sealed record Edit(double Place, int Length, string Piece, bool IsAtLine)
    {
        public string Of(string text)
        {
            var start = (int)(Place * text.Length);
            if (IsAtLine)
            {
                start = text.AsSpan(0, start).LastIndexOfAny('\n', '\r') + 1;
            }

            return string.Concat(text.AsSpan(0, start), Piece, text.AsSpan(Math.Min(text.Length, start + Length)));
        }
    }
}
