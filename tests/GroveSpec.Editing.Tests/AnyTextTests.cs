using CsCheck;
using GroveSpec.Binding;
using GroveSpec.Binding.Use;
using GroveSpec.Editing.Colouring;
using GroveSpec.Editing.Completing;
using GroveSpec.Editing.Explaining;
using GroveSpec.Editing.Fixing;
using GroveSpec.Editing.Names;
using GroveSpec.Editing.Notes;
using GroveSpec.Editing.Outline;
using GroveSpec.Editing.Straightening;
using GroveSpec.Syntax.Printing;
using GroveSpec.Syntax.Text;
using Xunit;

namespace GroveSpec.Editing.Tests;

/// <summary>What holds for any text, sound or broken, and any place in it.</summary>
public sealed class AnyTextTests
{
    private static readonly string[] Pieces =
    [
        "planting", "habit", "species", "container", "site", "viewed", "use", "trunk", "tape", "role", "task", "seen", "measured", "tolerance", "accept", "mute", "profile",
        "at", "diameter", "girth", "height", "lean", "toward", "line", "crown", "raised", "planned", "removed", "fixed", "form", "vigour", "aim", "keep", "rank", "story", "on", "all", "of", "in", "from", "to",
        "after", "before", "every", "until", "with", "coil", "span", "bend", "over", "facing", "done", "because", "latitude", "last", "frost", "means", "near", "stage", "source",
        "A", "B", "É", "main", "W1", "wire", "larix-kaempferi", "three-in-line", "late", "autumn", "2026", "2026-10-30", "leaf-out", "aluminium", "stout", "mm", "deg", "weeks", "x",
        "12", "-3.5", "1e9", ",", "(", ")", "{", "}", "%", "\"a text\"", "\"open", "# note", "🌲", "\t", " ", "\n", "\n", "\n", "\r\n", "\0", "\uD83C",
    ];

    private static readonly Gen<string> Text = Gen.Int[0, Pieces.Length - 1].Select(index => Pieces[index]).Array[0, 60].Select(pieces => string.Join(' ', pieces).Replace("\n ", "\n", StringComparison.Ordinal));

    [Fact]
    public void Whatever_is_asked_of_any_place_is_answered() => Gen.Select(Text, Gen.Int[0, 400]).Sample((text, place) =>
    {
        var assessment = Of(text);
        var offset = place % (text.Length + 1);

        var fits = Completer.At(assessment, offset);
        Assert.InRange(fits.Replaced.Start, 0, offset);
        Assert.InRange(fits.Replaced.End, offset, text.Length);
        Assert.Equal(fits.Completions.Length, fits.Completions.Select(fit => (fit.Kind, fit.Label)).Distinct().Count());

        if (Explainer.At(assessment, offset) is { } known)
        {
            Assert.True(known.Span.Touches(offset));
            Assert.All(known.Lines, Assert.NotEmpty);
        }

        var grown = GrowingSelection.At(assessment.Tree, offset);
        Assert.All(grown.Zip(grown.Skip(1)), pair => Assert.True(pair.First.Start >= pair.Second.Start && pair.First.End <= pair.Second.End && pair.First.Length < pair.Second.Length));
        _ = StatementForm.At(assessment.Tree, offset);
        _ = Fixes.At(assessment, new TextSpan(offset, 0), _ => true, TestContext.Current.CancellationToken);
    });

    [Fact]
    public void Lists_over_a_whole_text_are_in_order_and_lie_within_it() => Text.Sample(text =>
    {
        var assessment = Of(text);

        var words = WordClasses.Of(assessment.Tree, new TextSpan(0, text.Length));
        Assert.All(words.Zip(words.Skip(1)), pair => Assert.True(pair.First.Span.End <= pair.Second.Span.Start));
        Assert.All(words, word => Assert.DoesNotContain('\n', text.Substring(word.Span.Start, word.Span.Length)));
        Assert.All(FileOutline.Of(assessment.Tree), entry => Assert.True(entry.NameSpan.Start >= entry.Span.Start && entry.NameSpan.End <= entry.Span.End));
        Assert.All(Folds.Of(assessment.Tree), fold => Assert.Contains('\n', text.Substring(fold.Span.Start, fold.Span.Length).Replace('\r', '\n')));
        Assert.All(InLineNotes.Of(assessment, new TextSpan(0, text.Length)), note => Assert.NotEmpty(note.Text));
        Assert.All(HeadNotes.Of(assessment), note => Assert.NotEmpty(note.Text));
        Assert.All(NameUses.Of(assessment.Tree), use => Assert.True(use.Span.Length > 0 && use.Span.End <= text.Length));
    });

    [Fact]
    public void The_edits_that_set_a_text_straight_give_what_tidy_gives() => Text.Sample(text =>
    {
        var tree = Of(text).Tree;
        var edits = TidyEdits.Of(tree);
        var straight = text;
        foreach (var edit in edits.Reverse())
        {
            straight = string.Concat(straight.AsSpan(0, edit.Place.Span.Start), edit.NewText, straight.AsSpan(edit.Place.Span.End));
        }

        Assert.Equal(Tidy.Format(tree), straight);
    });

    private static Assessment Of(string text) => Assessment.Of("a.grove", SourceText.FromText(text), new NoFiles());
}
