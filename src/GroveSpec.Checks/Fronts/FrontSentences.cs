using System.Collections.Immutable;
using GroveSpec.Checks.Rules;
using GroveSpec.Model.Quantities;

namespace GroveSpec.Checks.Fronts;

/// <summary>Says what a front is good for.</summary>
public static class FrontSentences
{
    /// <summary>What is said of a front that loses nothing.</summary>
    public const string NothingIsLost = "Nothing is lost: the checks of the view find nothing.";

    /// <summary>Covered less than this, in percent, a trunk is seen whole.</summary>
    private const double HardlyCovered = 1;

    /// <summary>Covered so much, in percent, a trunk is told as covered wholly: it would be rounded to all of it.</summary>
    private const double WhollyCovered = 99.5;

    /// <summary>Why a front is good, and what it leaves.</summary>
    /// <param name="front">The front.</param>
    /// <param name="now">The front that the planting has now.</param>
    /// <param name="turned">The planting, seen from there.</param>
    /// <returns>One sentence.</returns>
    internal static string Why(Front front, Front now, CheckContext turned)
    {
        var found = front.Found == 0 ? "nothing" : $"{front.Found} ({front.Kinds})";
        var before = now.Found == 0 ? "nothing" : $"{now.Found} ({now.Kinds})";
        var head = front.Found == 0 && now.Found == 0 ? "The checks of the view find nothing, as now"
            : Say(front.From) == Say(now.From) ? $"The checks of the view find {found}, and it is the front it has now"
            : $"The checks of the view find {found}, where from {Say(now.From)}, the front it has now, they find {before}";
        var parts = new[] { Covered(turned), Gaps(turned), Largest(turned) }.Where(part => part.Length > 0).ToList();
        return $"{head}; {string.Join(", ", parts.SkipLast(1))}{(parts.Count > 1 ? ", and " : "")}{parts[^1]}.";
    }

    /// <summary>Within which bearings a front holds.</summary>
    /// <param name="front">The front.</param>
    /// <returns>One sentence.</returns>
    internal static string Holds(Front front)
    {
        var span = front.Span;
        if (span.IsAllRound)
        {
            return "No more is found from any side.";
        }

        return span.Width.Degrees < 0.1
            ? "It holds only exactly there: with the least turn of the pot more is found."
            : $"It holds from {Say(span.From)} to {Say(span.To)}: the viewer may step {Steps(front.From, span)} before more is found.";
    }

    private static string Steps(Bearing front, FrontSpan span)
    {
        var (left, right) = (new Bearing(front.Degrees - span.From.Degrees).Degrees, new Bearing(span.To.Degrees - front.Degrees).Degrees);
        if (left + right >= 360)
        {
            // Rounding set the front just outside its span: it stands at that end, and all round is no way there.
            (left, right) = left > right ? (0d, right) : (left, 0d);
        }

        var (clockwise, back) = (LengthWording.Say(right, 1), LengthWording.Say(left, 1));
        return clockwise == "0" ? $"not at all clockwise, but {back} deg the other way,"
            : back == "0" ? $"{clockwise} deg clockwise, but not at all the other way,"
            : $"{clockwise} deg clockwise or {back} deg the other way";
    }

    /// <summary>From where a front is seen.</summary>
    /// <param name="front">The front.</param>
    /// <param name="isNow">Whether it is the one that the planting has now.</param>
    /// <returns>Such as "From 201.37 deg" or "Now, from 180 deg".</returns>
    public static string From(Front front, bool isNow = false)
    {
        ArgumentNullException.ThrowIfNull(front);
        return $"{(isNow ? "Now, from" : "From")} {Say(front.From)}";
    }

    /// <summary>How good a front is.</summary>
    /// <param name="front">The front.</param>
    /// <returns>Such as "score 0.42".</returns>
    public static string Score(Front front)
    {
        ArgumentNullException.ThrowIfNull(front);
        return $"score {LengthWording.Say(front.Parts.Score, 2)}";
    }

    /// <summary>Which trunks are seen from nowhere.</summary>
    /// <param name="answer">What was found.</param>
    /// <returns>A sentence; an empty text where every trunk has a place, or nothing is suggested.</returns>
    public static string NotSeen(FrontsAnswer answer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        return answer.Obstacle is not null || answer.WithoutPlace.IsEmpty ? "" : $"Not seen from anywhere, because the file gives no place: {string.Join(", ", answer.WithoutPlace)}.";
    }

    /// <summary>A bearing as a grower sets it.</summary>
    /// <param name="bearing">The bearing.</param>
    /// <returns>To a hundredth of a degree, such as "201.37 deg".</returns>
    public static string Say(Bearing bearing) => LengthWording.Say(Math.Round(bearing.Degrees, 2) % 360, 2) + " deg";

    private static string Covered(CheckContext turned)
    {
        var seen = turned.View.Trunks;
        var covered = seen.Where(trunk => trunk.Hidden is { } hidden && hidden.Percent >= HardlyCovered).OrderByDescending(trunk => trunk.Hidden!.Value.Share).ToList();
        var wholly = covered.Count(trunk => trunk.Hidden!.Value.Percent >= WhollyCovered);
        var (unseen, unknown) = (turned.View.Unseen.Length, seen.Count(trunk => trunk.Hidden is null));
        return unseen > 0 ? $"{unseen} of {unseen + seen.Length} trunks stand beside or behind the eye"
            : covered.Count == 0 && unknown == seen.Length ? "what one trunk covers of another cannot be told, since no thickness is known"
            : covered.Count == 0 && unknown > 0 ? $"no trunk covers another as far as thicknesses are known, and of {unknown} it is not"
            : covered.Count == 0 ? "no trunk covers another"
            : covered.Count == 1 ? $"only {Wording.Name(covered[0].Name)} is covered, {(wholly > 0 ? "all" : Wording.Percent(covered[0].Hidden!.Value.Percent))} of it"
            : wholly > 0 ? $"{covered.Count} trunks are covered, {Wording.Name(covered[0].Name)} {(wholly > 1 ? $"and {wholly - 1} more " : "")}wholly"
            : $"{covered.Count} trunks are covered in part, {Wording.Name(covered[0].Name)} most, {Wording.Percent(covered[0].Hidden!.Value.Percent)} of it";
    }

    /// <summary>The trunks that are named of a front: those that its findings are about, the one that is covered most, and the thickest.</summary>
    /// <param name="front">The front.</param>
    /// <param name="turned">The planting, seen from there.</param>
    /// <returns>The names, each once.</returns>
    internal static ImmutableArray<string> Named(Front front, CheckContext turned)
    {
        var covered = (turned.View.Unseen.IsEmpty ? turned.View.Trunks : []).Where(trunk => trunk.Hidden is { } hidden && hidden.Percent >= HardlyCovered).OrderByDescending(trunk => trunk.Hidden!.Value.Share).Take(1).Select(trunk => trunk.Name);
        var largest = CentredMain.LargestFirst(turned.Outline is null ? [] : turned.Standing.Trunks).Take(1).Select(trunk => trunk.Name);
        return [.. covered.Concat(largest).Concat(front.Findings.SelectMany(finding => finding.Trunks)).Distinct(StringComparer.Ordinal)];
    }

    private static string Gaps(CheckContext turned)
    {
        var gaps = turned.View.Gaps.Select(gap => gap.Centres).Order().ToList();
        if (gaps.Count < 2)
        {
            return "";
        }

        var (least, most) = LengthWording.SayApart(gaps[0], gaps[^1], turned.Units);
        return least == most ? $"gaps in the view are all {least}" : $"gaps in the view run from {least} to {most}";
    }

    private static string Largest(CheckContext turned)
    {
        if (turned.Outline is not { } outline || CentredMain.LargestFirst(turned.Standing.Trunks).FirstOrDefault() is not { } largest)
        {
            return "";
        }

        var (offset, width) = CentredMain.OffCentre(turned.View.Frame.From, outline, largest);
        var share = width > Length.Zero ? 100 * Math.Abs(offset / width) : 0;
        return $"{Wording.Name(largest.Name)}, the thickest, stands {Wording.Percent(share)} of the container's width to the {(offset < Length.Zero ? "left" : "right")} of its middle";
    }
}
