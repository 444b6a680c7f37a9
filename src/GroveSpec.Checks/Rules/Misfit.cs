using System.Collections.Immutable;
using GroveSpec.Checks.Judging;
using GroveSpec.Checks.Surveying;
using GroveSpec.Craft.Survey;
using GroveSpec.Model.Judgement;
using GroveSpec.Model.Quantities;
using GroveSpec.Syntax.Text;

namespace GroveSpec.Checks.Rules;

/// <summary>Tape readings that disagree with each other or with the places that the file names.</summary>
internal sealed class Misfit : IRule
{
    private const int MostNamed = 5;
    private const int MostRelated = 8;

    // Beyond this, readings that disagree with one trunk's place are told one by one: a planting was put into other axes, and no trunk stands out.
    private const int MostGathered = 500;

    /// <inheritdoc/>
    public CheckDescription Description { get; } = new()
    {
        Name = "misfit",
        Severity = Severity.Warning,
        Limit = new(2, ToleranceUnit.Millimetres, 0.1, 1000),
        Meaning = "A tape reading disagrees with the others, or with the places that the file names.",
        Explanation = "Distances check each other as soon as more are read than places need. The fewest readings without which all others agree are named, with what these make them, where chance would give such a misfit less than once in a hundred surveys; where too few were read to tell which err, all that may be off are named. Where the place of one trunk is what all readings to it disagree with, that is named. A reading between two trunks with an at is held against these. A tape laid to another trunk, a slip of ten and a trunk that was moved since are the usual reasons.",
        Source = "least squares, and data snooping after Baarda (1968) and Pope (1976), from memory; the limit, by which a tape held by hand is off, is common practice",
    };

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(CheckContext context, double limit)
    {
        if (context.Planting.Tapes.IsEmpty || context.Tapes is not { } look)
        {
            return [];
        }

        var agreement = look();
        return
        [
            .. AgainstPlaces(context, [.. agreement.BetweenPlaces.Where(one => IsOff(context, one, limit))], limit),
            .. agreement.LeftOut.Where(one => IsOff(context, one, limit)).Select(one => Off(context, one, limit)),
            .. agreement.InDoubt.Where(row => row.Readings.All(one => IsOff(context, one, limit))).Select(row => OneOf(context, row, limit)),
            .. agreement.Misplaced.Where(place => place.IsSure && IsOff(place, limit) && !HasReadingsBetween(context, agreement, place, limit)).Select(place => Elsewhere(context, [place], limit)),
            .. OneOfPlaces(context, agreement, limit),
            .. agreement.Unsettled.Select(row => Unsettled(context, row, limit)),
        ];
    }

    private static bool IsOff(CheckContext context, FittedReading one, double limit) =>
        Math.Abs(MisfitOf(context, one).Nanometres) > (decimal)limit * Length.NanometresPerMillimetre;

    private static bool IsOff(MisplacedPlace place, double limit) => place.Stated.DistanceTo(place.ByReadings) > Length.FromMillimetres(limit);

    private static Length MisfitOf(CheckContext context, FittedReading one) => context.Planting.Tapes[one.Reading].Distance - one.Fitted;

    private static string SlipOf(CheckContext context, FittedReading one) =>
        UnitSlip.Hint(context.Planting.Tapes[one.Reading].Distance, one.OtherFitted is { } other ? [one.Fitted, other] : [one.Fitted]);

    /// <summary>Several that disagree with the place of one trunk are one fact: that trunk was moved, or its place is a slip. What a file accepts by itself stays by itself.</summary>
    private List<Finding> AgainstPlaces(CheckContext context, List<FittedReading> off, double limit)
    {
        var told = new List<Finding>();
        var accepted = Acceptances.KeysOf(context, Description);
        var gathered = off.Count > MostGathered ? [] : off.Where(one => accepted.Count == 0 || !accepted.Contains(Acceptances.Key(Description.Name, Ends(context, one)))).ToList();
        while (Busiest(context, gathered) is { } trunk)
        {
            FittedReading[] about = [.. gathered.Where(one => Ends(context, one).Contains(trunk, StringComparer.Ordinal)).OrderByDescending(one => Math.Abs(MisfitOf(context, one).Nanometres)).ThenBy(one => one.Reading)];
            gathered.RemoveAll(about.Contains);
            off.RemoveAll(about.Contains);
            told.Add(AgainstPlace(context, trunk, about, limit));
        }

        told.AddRange(off.Select(one => AgainstTwo(context, one, limit)));
        return told;
    }

    /// <summary>The trunk that most readings name, from two on; of several the first by name.</summary>
    private static string? Busiest(CheckContext context, List<FittedReading> readings) => readings
        .SelectMany(one => Ends(context, one))
        .GroupBy(name => name, StringComparer.Ordinal)
        .Where(group => group.Count() > 1)
        .OrderByDescending(group => group.Count())
        .ThenBy(group => group.Key, StringComparer.Ordinal)
        .FirstOrDefault()?.Key;

    private Finding AgainstTwo(CheckContext context, FittedReading one, double limit)
    {
        var (from, to) = (Wording.Name(context.Planting.Tapes[one.Reading].From), Wording.Name(context.Planting.Tapes[one.Reading].To));
        return Told(
            context,
            [one],
            $"{from} to {to} reads {Said(context, one)}, but by the places of both in this file it is {Fine(one.Fitted, context)}: {Amount(context, one)}. Measure it again, and mend the reading or the place that is wrong.{SlipOf(context, one)}",
            limit,
            Ends(context, one));
    }

    private Finding AgainstPlace(CheckContext context, string trunk, FittedReading[] about, double limit)
    {
        var worst = context.Planting.Tapes[about[0].Reading];
        var name = Wording.Name(trunk);
        return Told(
            context,
            about,
            $"{about.Length} tape readings disagree with the place of {name}: the worst, {Wording.Name(worst.From)} to {Wording.Name(worst.To)}, reads {Said(context, about[0])} and is {Fine(about[0].Fitted, context)} by the places in this file, {Amount(context, about[0])}. Measure {name} again; where it was moved since, write the new readings or take the old ones out.",
            limit,
            [trunk]);
    }

    private Finding Off(CheckContext context, FittedReading one, double limit)
    {
        var (from, to) = (Wording.Name(context.Planting.Tapes[one.Reading].From), Wording.Name(context.Planting.Tapes[one.Reading].To));
        return Told(
            context,
            [one],
            $"{from} to {to} reads {Said(context, one)}, but {(one.OtherFitted is { } other ? $"of the two places that the other readings leave the one makes it {Fine(one.Fitted, context)} and the other {Fine(other, context)}" : $"the other readings make it {Fine(one.Fitted, context)}: {Amount(context, one)}")}. Measure it again.{SlipOf(context, one)}",
            limit,
            Ends(context, one));
    }

    /// <summary>Whether the place is told already by readings between it and other places of the file.</summary>
    private static bool HasReadingsBetween(CheckContext context, TapeAgreement agreement, MisplacedPlace place, double limit) =>
        agreement.BetweenPlaces.Any(one => IsOff(context, one, limit) && Ends(context, one).Contains(place.Trunk, StringComparer.Ordinal));

    /// <summary>Places of which one is wrong, where no reading may be off instead and no reading between them says so. Where one of them is within the limit, that may be the one, and nothing is told.</summary>
    private IEnumerable<Finding> OneOfPlaces(CheckContext context, TapeAgreement agreement, double limit)
    {
        MisplacedPlace[] unsure = [.. agreement.Misplaced.Where(place => !place.IsSure)];
        return unsure.Length == 0 || unsure.Any(place => !IsOff(place, limit)) || agreement.InDoubt.Any(row => !row.OrPlaceOf.IsEmpty) || unsure.Any(place => HasReadingsBetween(context, agreement, place, limit))
            ? []
            : [Elsewhere(context, unsure, limit)];
    }

    private Finding Elsewhere(CheckContext context, MisplacedPlace[] places, double limit)
    {
        string[] names = [.. places.Select(place => place.Trunk)];
        var named = Wording.List(names);
        var off = places.Max(place => place.Stated.DistanceTo(place.ByReadings));
        FittedReading[] about = [.. Enumerable.Range(0, context.Planting.Tapes.Length)
            .Where(index => Array.Exists(names, name => context.Planting.Tapes[index].From == name || context.Planting.Tapes[index].To == name))
            .Select(index => new FittedReading(index, context.Planting.Tapes[index].Distance))];
        var message = names.Length == 1
            ? $"The tape readings agree with each other and not with the place of {named}: they put it {Fine(off, context)} from where this file does. Measure {named} again, and mend its \"at\" or the readings."
            : $"The tape readings agree with each other and not with the places of {named}: one of these is wrong, by up to {Fine(off, context)}. Measure them again, and mend the \"at\" that is wrong.";
        return Told(context, about, message, limit, []) with
        { Measured = off.Millimetres, Weight = off.Millimetres, Related = [.. names.SelectMany(name => Place(context, name))] };
    }

    private Finding OneOf(CheckContext context, DoubtfulReadings doubtful, double limit)
    {
        var row = doubtful.Readings;
        string[] named = [.. row.Take(MostNamed).Select((one, index) => $"{Name(one)} {Said(context, one)} ({(index == 0 ? "if it is this one, " : "")}{Amount(context, one)})")];
        var list = row.Length > MostNamed ? $"{string.Join(", ", named)} and {row.Length - MostNamed} more" : Wording.Row(named);
        return Told(
            context,
            row,
            $"{SurveyWords.HowMany(doubtful.Off, row.Length, "tape readings")} off{(doubtful.OrPlaceOf.IsEmpty ? "" : $", or the place of {Wording.List(doubtful.OrPlaceOf)} is wrong")}, and there are too few to tell which: {list}. Measure {Name(row[0])} again first; if it comes out the same, another of them is off.",
            limit,
            []);

        string Name(FittedReading one) => $"{Wording.Name(context.Planting.Tapes[one.Reading].From)} to {Wording.Name(context.Planting.Tapes[one.Reading].To)}";
    }

    private Finding Unsettled(CheckContext context, ImmutableArray<int> readings, double limit)
    {
        string[] names = [.. readings.SelectMany(reading => new[] { context.Planting.Tapes[reading].From, context.Planting.Tapes[reading].To }).Distinct(StringComparer.Ordinal)];
        return Told(
            context,
            [.. readings.Take(1).Select(reading => new FittedReading(reading, context.Planting.Tapes[reading].Distance))],
            $"The {readings.Length} tape readings among {Wording.List(names)} do not agree with each other as a tape reads, and it cannot be told which of them are off. Measure a few of these trunks again by themselves, or give more of them an \"at\".",
            limit,
            []) with
        { Measured = null, Limit = null, Unit = "", Trunks = [.. names.Order(StringComparer.Ordinal)], Remedies = [] };
    }

    private Finding Told(CheckContext context, IReadOnlyList<FittedReading> about, string message, double limit, IReadOnlyList<string> placed)
    {
        ImmutableArray<string> trunks = [.. about.SelectMany(one => Ends(context, one)).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)];
        var measured = about.Min(one => Math.Abs(MisfitOf(context, one).Millimetres));
        return new Finding
        {
            Check = Description,
            Severity = Description.Severity,
            Place = PlaceOf(context, about[0]),
            Message = message,
            Trunks = trunks,
            Measured = measured,
            Limit = limit,
            Unit = "mm",
            Weight = about.Max(one => Math.Abs(MisfitOf(context, one).Millimetres)),
            Related =
            [
                .. about.Skip(1).Take(MostRelated).Select(one => new RelatedPlace(PlaceOf(context, one), $"{Said(context, one)}, {Amount(context, one)}")),
                .. placed.SelectMany(name => Place(context, name)),
            ],
            Remedies = Acceptance.Offer(context, Description, trunks),
        };
    }

    private static IEnumerable<RelatedPlace> Place(CheckContext context, string name) => context.State.Trunks
        .Where(trunk => trunk.Name == name)
        .Take(1)
        .Select(trunk => new RelatedPlace(context.Origins.Locate(trunk.Trunk.Origin.Part("at")), Wording.Name(trunk.Name)));

    private static SourceSpan PlaceOf(CheckContext context, FittedReading one) => context.Origins.Locate(context.Planting.Tapes[one.Reading].Origin.Part("distance"));

    private static string[] Ends(CheckContext context, FittedReading one) => [context.Planting.Tapes[one.Reading].From, context.Planting.Tapes[one.Reading].To];

    private static string Said(CheckContext context, FittedReading one) => Fine(context.Planting.Tapes[one.Reading].Distance, context);

    /// <summary>By how much a reading is off, in words.</summary>
    private static string Amount(CheckContext context, FittedReading one)
    {
        var misfit = MisfitOf(context, one);
        return $"{Fine(misfit.Magnitude, context)} too {(misfit > Length.Zero ? "long" : "short")}";
    }

    private static string Fine(Length length, CheckContext context) => context.Units == UnitSystem.Inch
        ? LengthWording.Say(length.Inches, 2) + " in"
        : LengthWording.Say(length.Millimetres, 1) + " mm";
}
