using System.Collections.Immutable;
using GroveSpec.Binding;
using GroveSpec.Checks;
using GroveSpec.Checks.Moving;
using GroveSpec.Syntax.Text;

namespace GroveSpec.Editing.Fixing;

/// <summary>Gathers the fixes for what was found at a place. What a fix does is decided by the checks.</summary>
public static class Fixes
{
    /// <summary>The fixes for findings that touch a run of text, or whose other places do.</summary>
    /// <param name="assessment">The file.</param>
    /// <param name="span">The run.</param>
    /// <param name="isMeant">Which of those findings are meant.</param>
    /// <param name="cancellation">Ends the search for moves.</param>
    /// <returns>The fixes, those of the first finding first; of one finding a move comes before an acceptance.</returns>
    /// <exception cref="OperationCanceledException">The search was ended.</exception>
    public static ImmutableArray<Fix> At(Assessment assessment, TextSpan span, Func<Finding, bool> isMeant, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(assessment);
        ArgumentNullException.ThrowIfNull(isMeant);
        var fixes = ImmutableArray.CreateBuilder<Fix>();
        List<Finding> meant = [.. assessment.Findings.Where(finding => Touches(assessment, finding, span) && isMeant(finding))];

        // However many are asked for at once, the answer is to come in about the same time.
        var looks = SmallestMove.MostLooks / Math.Max(1, meant.Count(finding => finding.Check.IsComposition));
        foreach (var finding in meant)
        {
            if (finding.Check.IsComposition && SmallestMove.Find(assessment.ToContext(), finding, looks, cancellation) is { } move)
            {
                fixes.Add(new(move.Title, finding, move.Edits, IsBest: false));
            }

            foreach (var remedy in finding.Remedies)
            {
                fixes.Add(new(remedy.Title, finding, remedy.Edits, IsBest: IsPlain(finding)));
            }
        }

        return fixes.ToImmutable();
    }

    /// <summary>The edits of all fixes that can be taken without thinking.</summary>
    /// <param name="assessment">The file.</param>
    /// <returns>The edits of the file itself, none overlapping, in the order of the text.</returns>
    public static ImmutableArray<TextEdit> Plain(Assessment assessment)
    {
        ArgumentNullException.ThrowIfNull(assessment);
        var edits = ImmutableArray.CreateBuilder<TextEdit>();
        var end = -1;
        foreach (var edit in assessment.Findings.Where(IsPlain).SelectMany(finding => finding.Remedies[0].Edits).Where(edit => edit.Place.File == assessment.File).OrderBy(edit => edit.Place.Span))
        {
            if (edit.Place.Span.Start > end)
            {
                edits.Add(edit);
                end = edit.Place.Span.End;
            }
        }

        return edits.ToImmutable();
    }

    /// <summary>Only what cannot be read, and can have meant one thing only, is corrected without a question.</summary>
    private static bool IsPlain(Finding finding) => !finding.Check.IsComposition && finding.Severity == Severity.Error && finding.Remedies.Length == 1 && finding.Remedies[0].Title.StartsWith("write ", StringComparison.Ordinal);

    private static bool Touches(Assessment assessment, Finding finding, TextSpan span) =>
        Overlaps(assessment, finding.Place, span) || finding.Related.Any(related => Overlaps(assessment, related.Place, span));

    private static bool Overlaps(Assessment assessment, SourceSpan place, TextSpan span) =>
        place.File == assessment.File && place.Span.Start <= span.End && place.Span.End >= span.Start;
}
