using System.Collections.Immutable;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.States;

namespace GroveSpec.Craft.Survey;

/// <summary>Chooses the reading to take next: first what is wrong, then what is free, then what nothing checks, then what is wide.</summary>
/// <param name="trunks">The trunks.</param>
/// <param name="surveyed">Where they are.</param>
/// <param name="judged">How the readings fit.</param>
/// <param name="freedoms">What is free.</param>
/// <param name="parts">The networks, the largest first.</param>
internal sealed class NextReadingChoice(
    TrunkState[] trunks,
    ImmutableArray<SurveyedTrunk> surveyed,
    ImmutableArray<SurveyedReading> judged,
    ImmutableArray<SurveyFreedom> freedoms,
    List<SurveyPart> parts)
{
    // An ellipse of a millimetre is as good as a tape gives.
    private const double WideInMillimetres = 1;

    // Less than a tenth off is not worth the tape.
    private const double WorthWhile = 0.9;

    private const int MostForThree = 40;

    /// <summary>Chooses.</summary>
    /// <returns>The reading; null where none would tell much.</returns>
    public NextReading? Choose() => Again() ?? Tie() ?? InParts(Hold) ?? InParts(Sides) ?? InParts(SameSide) ?? InParts(Check) ?? InParts(Narrow);

    private NextReading? InParts(Func<SurveyPart, NextReading?> choose) => parts.Select(choose).FirstOrDefault(next => next is not null);

    private NextReading? Again()
    {
        var off = judged
            .Where(reading => reading.Kind is SurveyedReadingKind.LeftOut or SurveyedReadingKind.AgainstPlaces)
            .OrderByDescending(reading => Math.Abs(reading.Misfit?.Millimetres ?? 0))
            .FirstOrDefault();
        if (off is not null)
        {
            return new(off.Reading.From, [off.Reading.To], NextReadingReason.ReadAgain);
        }

        // What is off most is where to begin when nothing tells more.
        if (parts.Exists(part => part.IsUnsettled) && judged.Where(reading => reading.Misfit is not null).MaxBy(reading => Math.Abs(reading.Misfit!.Value.Millimetres)) is { } worst)
        {
            return new(worst.Reading.From, [worst.Reading.To], NextReadingReason.ReadAgain);
        }

        var suspect = parts.SelectMany(part => part.MayBeOff).Select(one => judged[one.Reading.Source]).FirstOrDefault();
        return suspect is null ? null : new(suspect.Reading.From, [suspect.Reading.To], NextReadingReason.TellWhichIsOff);
    }

    private NextReading? Tie()
    {
        var loose = freedoms.FirstOrDefault(freedom => freedom.Kind is SurveyFreedomKind.Unread or SurveyFreedomKind.Apart);
        if (loose is null)
        {
            return null;
        }

        SurveyedTrunk[] placed = [.. surveyed.Where(trunk => trunk.Place is not null && trunk.OtherPlace is null && !loose.Trunks.Contains(trunk.Name)).Take(MostForThree)];
        ImmutableArray<string> to = placed.Length >= 3 ? Widest(placed) : [.. trunks.Select(trunk => trunk.Name).Where(name => name != loose.Trunks[0]).Take(3)];
        return to.IsEmpty ? null : new(loose.Trunks[0], to, NextReadingReason.Tie);
    }

    /// <summary>The three trunks that span the largest triangle: nothing stands less on one line.</summary>
    private static ImmutableArray<string> Widest(SurveyedTrunk[] placed)
    {
        var (best, most) = ((0, 1, 2), -1.0);
        for (var one = 0; one < placed.Length; one++)
        {
            for (var two = one + 1; two < placed.Length; two++)
            {
                for (var three = two + 1; three < placed.Length; three++)
                {
                    var (a, b, c) = (placed[one].Place!.Value, placed[two].Place!.Value, placed[three].Place!.Value);
                    var area = Math.Abs(((b.X - a.X).Millimetres * (c.Y - a.Y).Millimetres) - ((b.Y - a.Y).Millimetres * (c.X - a.X).Millimetres));
                    (best, most) = area > most ? ((one, two, three), area) : (best, most);
                }
            }
        }

        return [placed[best.Item1].Name, placed[best.Item2].Name, placed[best.Item3].Name];
    }

    private NextReading? Hold(SurveyPart part) =>
        part.Solved.Motions.Count > 0 && NextReadingSearch.ForFree(part.Solved) is { } pair
            ? new(Name(part, pair.From), [Name(part, pair.To)], NextReadingReason.Hold)
            : null;

    private NextReading? Sides(SurveyPart part) =>
        NextReadingSearch.ForMirror(part.Solved, part.OtherPlaces) is { } found
            ? new(Name(part, found.From), [Name(part, found.To)], NextReadingReason.TellSides, Length.FromMillimetres(found.Difference))
            : null;

    private NextReading? SameSide(SurveyPart part) =>
        NextReadingSearch.ForSameSide(part.Solved, part.OtherPlaces) is { } found
            ? new(Name(part, found.From), [Name(part, found.To)], NextReadingReason.TellSameSide, Length.FromMillimetres(found.Difference))
            : null;

    // What was read is read again only where nothing else is left: a length is better checked another way.
    private NextReading? Check(SurveyPart part) =>
        part.Solved.Spare == 0 && (NextReadingSearch.ForNarrowing(part.Solved, isUnreadAsked: true) ?? NextReadingSearch.ForNarrowing(part.Solved, isUnreadAsked: false)) is { } found
            ? new(Name(part, found.From), [Name(part, found.To)], NextReadingReason.Check)
            : null;

    private NextReading? Narrow(SurveyPart part)
    {
        if (NextReadingSearch.ForNarrowing(part.Solved, isUnreadAsked: false) is not { } found)
        {
            return null;
        }

        var scale = part.Solved.Precision.Deviation * part.Solved.Precision.EllipseFactor;
        return found.Before * scale > WideInMillimetres && found.After < WorthWhile * found.Before
            ? new(Name(part, found.From), [Name(part, found.To)], NextReadingReason.Narrow, Cut(found.Before * scale), Cut(found.After * scale))
            : null;
    }

    private string Name(SurveyPart part, int index) => trunks[part.Trunks[index]].Name;

    private static Length Cut(double millimetres) => Length.FromMillimetres(Math.Min(millimetres, Length.Largest.Millimetres));
}
