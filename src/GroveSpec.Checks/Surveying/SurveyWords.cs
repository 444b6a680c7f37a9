using System.Collections.Immutable;
using System.Globalization;
using GroveSpec.Craft.Survey;
using GroveSpec.Model.Quantities;

namespace GroveSpec.Checks.Surveying;

/// <summary>A survey in a grower's words. Names stand in them as the file writes them.</summary>
public static class SurveyWords
{
    /// <summary>How well a place is known, as programs read it.</summary>
    /// <param name="kind">How well.</param>
    /// <returns>Words.</returns>
    public static string Word(SurveyedPlaceKind kind) => kind switch
    {
        SurveyedPlaceKind.Known => "known",
        SurveyedPlaceKind.Found => "found",
        SurveyedPlaceKind.InChosenAxes => "in chosen axes",
        SurveyedPlaceKind.OneOfTwo => "one of two",
        SurveyedPlaceKind.Doubtful => "doubtful",
        _ => "free",
    };

    /// <summary>How a reading fits, as programs read it.</summary>
    /// <param name="kind">How.</param>
    /// <returns>Words.</returns>
    public static string Word(SurveyedReadingKind kind) => kind switch
    {
        SurveyedReadingKind.Fits => "fits",
        SurveyedReadingKind.LeftOut => "left out",
        SurveyedReadingKind.MayBeOff => "may be off",
        SurveyedReadingKind.AgainstPlaces => "against places",
        _ => "unusable",
    };

    /// <summary>What is free, as programs read it.</summary>
    /// <param name="kind">What.</param>
    /// <returns>A word.</returns>
    public static string Word(SurveyFreedomKind kind) => kind switch
    {
        SurveyFreedomKind.Axes => "axes",
        SurveyFreedomKind.Turn => "turn",
        SurveyFreedomKind.Mirror => "mirror",
        SurveyFreedomKind.Motion => "motion",
        SurveyFreedomKind.Apart => "apart",
        _ => "unread",
    };

    /// <summary>What a further reading is good for, as programs read it.</summary>
    /// <param name="reason">What for.</param>
    /// <returns>Words.</returns>
    public static string Word(NextReadingReason reason) => reason switch
    {
        NextReadingReason.ReadAgain => "read again",
        NextReadingReason.TellWhichIsOff => "tell which is off",
        NextReadingReason.Tie => "tie",
        NextReadingReason.Hold => "hold",
        NextReadingReason.TellSides => "tell sides",
        NextReadingReason.TellSameSide => "tell same side",
        NextReadingReason.Check => "check",
        _ => "narrow",
    };

    /// <summary>What all of it is about, to stand behind a planting's name.</summary>
    /// <param name="survey">The survey.</param>
    /// <returns>Such as "12 tape readings among 7 trunks".</returns>
    public static string Heading(TapeSurvey survey)
    {
        ArgumentNullException.ThrowIfNull(survey);
        return $"{Count(survey.Readings.Length, "tape reading")} among {Count(survey.Trunks.Length, "trunk")}";

        static string Count(int count, string what) => $"{count} {what}{(count == 1 ? "" : "s")}";
    }

    /// <summary>Why no place was sought.</summary>
    /// <param name="survey">The survey.</param>
    /// <returns>A sentence; an empty text where places were sought.</returns>
    public static string NothingSought(TapeSurvey survey)
    {
        ArgumentNullException.ThrowIfNull(survey);
        return Sought(survey).Any() ? ""
            : survey.Trunks.IsEmpty ? "No trunk is written down."
            : "The file gives every trunk a place, so that the readings only check them.";
    }

    /// <summary>The trunks whose place is not stated by the file, in its order.</summary>
    /// <param name="survey">The survey.</param>
    /// <returns>The trunks, as <see cref="Place"/> tells them.</returns>
    public static IEnumerable<SurveyedTrunk> Sought(TapeSurvey survey)
    {
        ArgumentNullException.ThrowIfNull(survey);
        return survey.Trunks.Where(trunk => trunk.Kind != SurveyedPlaceKind.Known);
    }

    /// <summary>All that is said of a survey beside its places: what would explain it, what hinders it, readings that do not fit, what is free, how good the readings are, and the one to take next.</summary>
    /// <param name="survey">The survey.</param>
    /// <param name="units">The units to speak in.</param>
    /// <returns>Sentences in the order in which they are told; empty where nothing was sought and nothing read.</returns>
    public static ImmutableArray<string> Notes(TapeSurvey survey, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(survey);
        var told = ImmutableArray.CreateBuilder<string>();
        if (survey.FitsOtherwise is { } otherwise)
        {
            told.Add(Otherwise(otherwise, units));
        }

        if (survey.IsUnsettled)
        {
            told.Add(Disagreement(survey, units));
        }

        if (survey.IsTooLarge)
        {
            told.Add($"More than {TapeSurvey.MostTrunks} trunks without a place hang together by readings, which is more than is sought at once. Give some of them an \"at\", and the rest are found.");
        }

        told.AddRange(survey.Readings.Select(judged => Misfit(judged, units)).Where(said => said.Length > 0));
        SurveyedReading[] suspects = [.. survey.Readings.Where(judged => judged.Kind == SurveyedReadingKind.MayBeOff)];
        if (suspects.Length > 0)
        {
            told.Add(SomeAreOff(survey, suspects, units));
        }

        told.AddRange(survey.Misplaced.Select(place => Misplaced(place, units)));

        told.AddRange(survey.Freedoms.Select(Free));
        string[] loose = [.. Sought(survey).Where(trunk => trunk is { IsLoose: true, Kind: SurveyedPlaceKind.Found or SurveyedPlaceKind.InChosenAxes }).Select(trunk => trunk.Name)];
        if (loose.Length > 0)
        {
            told.Add($"{Wording.Row(loose)} {(loose.Length == 1 ? "is" : "are")} held too loosely to be written: the trunks that {(loose.Length == 1 ? "it was" : "they were")} read to lie too nearly in one line with {(loose.Length == 1 ? "it" : "them")}, or the readings disagree too much. Read {(loose.Length == 1 ? "it" : "each")} to one more trunk that stands aside of those.");
        }

        var free = survey.Freedoms.Select(freedom => freedom.Kind).ToHashSet();
        if (free.Contains(SurveyFreedomKind.Axes) && survey.FitsOtherwise is null && !survey.Trunks.Any(trunk => trunk.CanBeWritten) && survey.Trunks.Any(trunk => trunk.Kind == SurveyedPlaceKind.InChosenAxes))
        {
            told.Add("Of the places in chosen axes only the origin is sure, and with it alone the rest could not be written later: nothing is written.");
        }

        if (AllFit(survey, units) is { Length: > 0 } fits)
        {
            told.Add(fits);
        }

        if (Sought(survey).Any(trunk => trunk.Ellipse is not null && trunk.Kind != SurveyedPlaceKind.Doubtful))
        {
            told.Add($"{Precision(survey, units)} Places lie within what is told in 95 of 100 cases.");
        }

        if (survey.Next is not null || (Sought(survey).Any() && survey.Misplaced.IsEmpty))
        {
            var isOnEitherSide = survey.Next is null or { Reason: NextReadingReason.Check or NextReadingReason.Narrow } && free.Contains(SurveyFreedomKind.Mirror);
            var canMove = survey.Next is null && free.Contains(SurveyFreedomKind.Motion);
            if (canMove)
            {
                told.Add("No reading among these trunks would hold what can still move: they stand in one line. Read to one that stands aside of it, or give the trunk an \"at\".");
            }
            else if (isOnEitherSide)
            {
                told.Add("No reading among these trunks would tell the side. Read to one that stands aside of the line over which they may be turned, or give one of them an \"at\".");
            }

            if (survey.Next is not null || (!canMove && !isOnEitherSide && !survey.IsTooLarge))
            {
                told.Add(Next(survey.Next, units));
            }
        }

        return told.ToImmutable();
    }

    /// <summary>Where a trunk stands.</summary>
    /// <param name="trunk">The trunk.</param>
    /// <param name="units">The units to speak in.</param>
    /// <returns>A sentence without its end.</returns>
    public static string Place(SurveyedTrunk trunk, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(trunk);
        return trunk.Kind switch
        {
            SurveyedPlaceKind.Known => $"{Say(trunk.Place!.Value, units)}, as the file says",
            SurveyedPlaceKind.InChosenAxes when trunk.Ellipse!.Value.HalfLong == Length.Zero => $"{Say(trunk.Place!.Value, units)}, the origin",
            SurveyedPlaceKind.Found or SurveyedPlaceKind.InChosenAxes => $"{Say(trunk.Place!.Value, units)}, {Within(trunk.Ellipse!.Value, units)}",
            SurveyedPlaceKind.OneOfTwo => $"{Say(trunk.Place!.Value, units)}, or {Say(trunk.OtherPlace!.Value, units)}: the readings fit both",
            SurveyedPlaceKind.Doubtful => $"about {Say(trunk.Place!.Value, units)}, which depends on what may be off",
            _ => "not held by the readings",
        };
    }

    /// <summary>What is free.</summary>
    /// <param name="freedom">What.</param>
    /// <returns>A sentence.</returns>
    public static string Free(SurveyFreedom freedom)
    {
        ArgumentNullException.ThrowIfNull(freedom);
        return freedom.Kind switch
        {
            SurveyFreedomKind.Axes => $"The file gives no trunk a place, so the axes were chosen: {freedom.Trunks[0]} is the origin, x runs to the right, and which side is the back is open. Hold the plan beside the planting: if the trunks go round the other way there, use --mirrored.",
            SurveyFreedomKind.Turn => $"Only {freedom.About} has a place of its own, so that all others may turn about it and be turned over. Give one more trunk an \"at\", and a third that stands aside of the line through both.",
            SurveyFreedomKind.Mirror => $"{Wording.Row(freedom.Trunks)} may stand on either side: the readings fit a place and its mirror image alike.",
            SurveyFreedomKind.Motion => $"{Wording.Row(freedom.Trunks)} can still move without any reading changing.",
            SurveyFreedomKind.Apart => $"{Wording.Row(freedom.Trunks)} hang together, but nothing ties them to trunks whose place is known; it takes three readings, not all from one trunk.",
            _ => $"Nothing was read to {Wording.Row(freedom.Trunks)}.",
        };
    }

    /// <summary>A reading that does not take part, or should not.</summary>
    /// <param name="judged">The reading.</param>
    /// <param name="units">The units to speak in.</param>
    /// <returns>A sentence; an empty text for one that fits.</returns>
    public static string Misfit(SurveyedReading judged, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(judged);
        var name = $"{judged.Reading.From} to {judged.Reading.To}";
        switch (judged.Kind)
        {
            case SurveyedReadingKind.LeftOut when judged is { Fitted: { } fitted, OtherFitted: { } other }:
                return $"{name} reads {Fine(judged.Reading.Distance, units)}, but of the two places that the others leave the one makes it {Fine(fitted, units)} and the other {Fine(other, units)}: it fits neither, and was left out.{UnitSlip.Hint(judged.Reading.Distance, [fitted, other])}";
            case SurveyedReadingKind.LeftOut when judged.Fitted is { } fitted:
                return $"{name} reads {Fine(judged.Reading.Distance, units)}, but the others make it {Fine(fitted, units)}: it is {Fine(judged.Misfit!.Value.Magnitude, units)} too {(judged.Misfit > Length.Zero ? "long" : "short")}, and was left out.{UnitSlip.Hint(judged.Reading.Distance, [fitted])}";
            case SurveyedReadingKind.LeftOut:
                return $"{name} reads {Fine(judged.Reading.Distance, units)}, which does not fit the others, and was left out.";
            case SurveyedReadingKind.AgainstPlaces:
                return $"{name} reads {Fine(judged.Reading.Distance, units)}, but by the places in the file it is {Fine(judged.Fitted!.Value, units)}: the reading or one of the two places is wrong.{UnitSlip.Hint(judged.Reading.Distance, [judged.Fitted.Value])}";
            case SurveyedReadingKind.Unusable when judged.Reading.From == judged.Reading.To:
                return $"{name} is from a trunk to itself, and says nothing.";
            case SurveyedReadingKind.Unusable when judged.Reading.IsBetweenBark:
                return $"{name} is read between bark; to count it, the thickness of both must be known.";
            case SurveyedReadingKind.Unusable:
                return $"{name} could not be used: one of the two is not in this planting.";
            default:
                return "";
        }
    }

    /// <summary>A place in the file that does not fit what was read to it.</summary>
    /// <param name="place">The place.</param>
    /// <param name="units">The units to speak in.</param>
    /// <returns>A sentence or two.</returns>
    public static string Misplaced(MisplacedPlace place, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(place);
        var off = $"the file puts {place.Trunk} {Say(place.Stated, units)}, but the readings to it put it {Say(place.ByReadings, units)}, {Fine(place.Stated.DistanceTo(place.ByReadings), units)} from there";
        return place.IsSure
            ? $"The readings agree with each other and not with the place of {place.Trunk}: {off}. Measure {place.Trunk} again and mend its \"at\", or the readings; until then nothing that hangs on it is written."
            : $"It may be the place of {place.Trunk} that is wrong: {off}.";
    }

    /// <summary>Readings that do not agree, where it cannot be told which are off.</summary>
    /// <param name="survey">The survey.</param>
    /// <param name="units">The units to speak in.</param>
    /// <returns>Sentences.</returns>
    public static string Disagreement(TapeSurvey survey, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(survey);
        var much = (survey.Disagreement, survey.TapeIsRightTo) is not ({ } known, { } hand) ? ""
            : known > hand ? $": with the best places found they are off by {Fine(known, units)} on the whole, where a tape read by hand is right to {Fine(hand, units)}"
            : ": with the best places found several are off by more than chance gives";
        return $"The readings do not agree with each other{much}, and it cannot be told which of them are off. Read the trunks whose place is doubtful again, each to one or two more that stand well apart; where many are surveyed, survey fewer at first, or give more of them an \"at\".";
    }

    /// <summary>That all readings would fit, had they been read the other way.</summary>
    /// <param name="otherwise">How.</param>
    /// <param name="units">The units to speak in.</param>
    /// <returns>Sentences.</returns>
    public static string Otherwise(ReadOtherwise otherwise, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(otherwise);
        var (how, what) = otherwise.IsBetweenBark ? ("between bark", "write \"between bark\" behind each") : ("from centre to centre", "take \"between bark\" out of each");
        return $"All readings would fit, the worst to {Fine(otherwise.Worst, units)}, had they been read {how}. Where they were, {what}; until that is sure no place is written.";
    }

    /// <summary>How many of several readings are off.</summary>
    /// <param name="off">How many; null where that is not known.</param>
    /// <param name="among">Of how many.</param>
    /// <param name="what">What they are called.</param>
    /// <returns>Such as "Two of these 5 readings are".</returns>
    public static string HowMany(int? off, int among, string what = "readings") => off switch
    {
        1 => $"One of these {among} {what} is",
        2 => $"Two of these {among} {what} are",
        { } more => $"{more} of these {among} {what} are",
        _ => $"Some of these {among} {what} are",
    };

    /// <summary>The reading to take next.</summary>
    /// <param name="next">The reading; null where none would tell much.</param>
    /// <param name="units">The units to speak in.</param>
    /// <returns>A sentence.</returns>
    public static string Next(NextReading? next, UnitSystem units)
    {
        if (next is null)
        {
            return "No further reading would tell much more.";
        }

        var to = Wording.Row(next.To);
        return next.Reason switch
        {
            NextReadingReason.ReadAgain => $"Next, read {next.From} to {to} again.",
            NextReadingReason.TellWhichIsOff => $"Next, read {next.From} to {to} again; if it comes out the same, another of those is off.",
            NextReadingReason.Tie => $"Next, read {next.From} to {to}: three that stand well apart hold it.",
            NextReadingReason.Hold => $"Next, read {next.From} to {to}: it holds most of what is free.",
            NextReadingReason.TellSides => $"Next, read {next.From} to {to}: it tells the two sides apart by {Fine(next.Before!.Value, units)}.",
            NextReadingReason.TellSameSide => $"Next, read {next.From} to {to}: it tells by {Fine(next.Before!.Value, units)} whether both stand on the same side.",
            NextReadingReason.Check => $"Next, read {next.From} to {to}: every place is held by just as many readings as it needs, and with one more a mistake would show.",
            _ => $"Next, read {next.From} to {to}: it brings the least sure place from within {Fine(next.Before!.Value, units)} to within {Fine(next.After!.Value, units)}.",
        };
    }

    private static string AllFit(TapeSurvey survey, UnitSystem units)
    {
        SurveyedReading[] told = [.. survey.Readings.Where(judged => judged.Misfit is not null)];
        return told.Length == 0 || survey.IsTooLarge || survey.IsUnsettled || !survey.Misplaced.IsEmpty || survey.Readings.Any(judged => judged.Kind != SurveyedReadingKind.Fits)
            ? ""
            : $"{(told.Length == 1 ? "The reading fits" : "All readings fit")}, {(told.Length == 1 ? "" : "the worst ")}to {Fine(told.Select(judged => judged.Misfit!.Value.Magnitude).Max(), units)}.";
    }

    private static string SomeAreOff(TapeSurvey survey, IReadOnlyList<SurveyedReading> judged, UnitSystem units) =>
        $"{HowMany(survey.OffAmong, judged.Count)} off{(survey.Misplaced.IsEmpty ? "" : ", or a place in the file is wrong")}, and there are too few to tell which: {Wording.Row([.. judged.Select(one => $"{one.Reading.From} to {one.Reading.To} {Fine(one.Reading.Distance, units)}")])}.";

    private static string Precision(TapeSurvey survey, UnitSystem units) => survey.IsDeviationAssumed
        ? $"{Spare(survey.SpareReadings)}: too few to show how well you read, so that {Fine(survey.ReadingDeviation, units)} a reading is assumed."
        : $"{Spare(survey.SpareReadings)}, and by them a reading is off by {Fine(survey.ReadingDeviation, units)} (one standard deviation).";

    private static string Spare(int readings) => readings switch
    {
        0 => "No reading is to spare",
        1 => "One reading is to spare",
        _ => $"{readings} readings are to spare",
    };

    private static string Within(ErrorEllipse ellipse, UnitSystem units)
    {
        var (one, other) = (Fine(ellipse.HalfLong, units), Fine(ellipse.HalfShort, units));
        return one == other ? $"within {one}" : $"within {one}, {other} the other way";
    }

    private static string Say(PlanPoint place, UnitSystem units) => units == UnitSystem.Inch
        ? $"at {Number(place.X.Inches, 2)}, {Number(place.Y.Inches, 2)} in"
        : $"at {Number(place.X.Millimetres, 1)}, {Number(place.Y.Millimetres, 1)} mm";

    private static string Fine(Length length, UnitSystem units) => units == UnitSystem.Inch
        ? $"{Number(length.Inches, 2)} in"
        : $"{Number(length.Millimetres, 1)} mm";

    private static string Number(double value, int decimals)
    {
        var text = Math.Round(value, decimals, MidpointRounding.AwayFromZero).ToString(decimals == 1 ? "0.0" : "0.00", CultureInfo.InvariantCulture);
        return text.Trim('0', '.', '-').Length == 0 ? text.TrimStart('-') : text;
    }
}
