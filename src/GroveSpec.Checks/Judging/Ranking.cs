using System.Collections.Immutable;

namespace GroveSpec.Checks.Judging;

/// <summary>Puts findings in the order in which a grower should hear them, and leaves the lesser of many untold.</summary>
internal static class Ranking
{
    /// <summary>No one reads more of a kind than this; a file with a fault on each of its lines has one fault.</summary>
    private const int MostOfAnyKind = 1_000;

    /// <summary>Sorts: errors, warnings, hints; then the catalogue's order of checks; then the worst; then by the trunks' names, so that the order of a file's lines decides nothing; then their place.</summary>
    /// <param name="findings">The findings, sorted in place.</param>
    public static void Sort(List<Finding> findings)
    {
        var order = new Dictionary<CheckDescription, int>(ReferenceEqualityComparer.Instance);
        foreach (var check in Catalogue.All)
        {
            order[check] = order.Count;
        }

        findings.Sort((left, right) =>
        {
            var compared = left.Severity.CompareTo(right.Severity);
            compared = compared != 0 ? compared : OrderOf(order, left).CompareTo(OrderOf(order, right));
            compared = compared != 0 ? compared : right.Weight.CompareTo(left.Weight);
            compared = compared != 0 ? compared : CompareNames(left.Trunks.AsSpan(), right.Trunks.AsSpan());
            compared = compared != 0 ? compared : string.CompareOrdinal(left.Place.File, right.Place.File);
            compared = compared != 0 ? compared : left.Place.Span.CompareTo(right.Place.Span);
            return compared != 0 ? compared : string.CompareOrdinal(left.Message, right.Message);
        });
    }

    /// <summary>Tells at most so many of a kind, among findings of composition and hints; the last one told says how many more there are.</summary>
    /// <param name="sorted">Sorted findings.</param>
    /// <param name="most">How many of a kind are told.</param>
    /// <returns>The findings told.</returns>
    public static ImmutableArray<Finding> Tell(List<Finding> sorted, int most)
    {
        var told = ImmutableArray.CreateBuilder<Finding>();
        for (var start = 0; start < sorted.Count;)
        {
            var end = start + 1;
            while (end < sorted.Count && ReferenceEquals(sorted[end].Check, sorted[start].Check) && sorted[end].Severity == sorted[start].Severity)
            {
                end++;
            }

            var isCounted = sorted[start].Check.IsComposition || sorted[start].Severity == Severity.Hint;
            var shown = Math.Min(isCounted ? Math.Min(most, MostOfAnyKind) : MostOfAnyKind, end - start);
            var untold = end - start - shown;
            for (var index = start; index < end; index++)
            {
                // A rule that found very many has counted some of them already.
                untold += sorted[index].Untold;
                if (index < start + shown)
                {
                    told.Add(sorted[index] with { Untold = 0 });
                }
            }

            if (untold > 0)
            {
                told[^1] = told[^1] with
                {
                    Untold = untold,
                    Message = told[^1].Message + (untold == 1 ? " One more of this kind is less marked and not told." : $" {untold} more of this kind are less marked and not told."),
                };
            }

            start = end;
        }

        return told.ToImmutable();
    }

    /// <summary>Compares rows of names, name by name and then by how many there are.</summary>
    /// <param name="left">Names, sorted.</param>
    /// <param name="right">Others.</param>
    /// <returns>Below zero when the left row comes first, above it when the right one does, zero for equal rows.</returns>
    public static int CompareNames(ReadOnlySpan<string> left, ReadOnlySpan<string> right)
    {
        for (var index = 0; index < Math.Min(left.Length, right.Length); index++)
        {
            if (string.CompareOrdinal(left[index], right[index]) is var compared and not 0)
            {
                return compared;
            }
        }

        return left.Length.CompareTo(right.Length);
    }

    private static int OrderOf(Dictionary<CheckDescription, int> order, Finding finding) => order.TryGetValue(finding.Check, out var place) ? place : int.MaxValue;
}
