using GroveSpec.Model;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.Readings;
using GroveSpec.Model.Times;
using GroveSpec.Model.Trunks;
using NodaTime;
using NodaTime.Text;

namespace GroveSpec.Checks.Rules;

/// <summary>Readings that do not go with what is known of their trunk.</summary>
internal sealed class UnlikelyReading : IRule
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } = new()
    {
        Name = "unlikely-reading",
        Severity = Severity.Hint,
        Meaning = "A reading does not go with what is known of the trunk.",
        Explanation = "Trunks do not get thinner, and cannot be measured before they were raised, after they were removed or after the day that is shown. Readings are history and are never changed for you: look whether the number, the date or the trunk's name is wrong.",
        Source = "common practice",
    };

    /// <summary>A diameter may read lower by 2 % or by a millimetre, whichever is more, before it counts as shrinking: what two readings of one trunk differ by (common practice).</summary>
    private const double Allowance = 0.02;

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(CheckContext context, double limit)
    {
        if (context.Planting.Measured.IsEmpty)
        {
            yield break;
        }

        var trunks = new Dictionary<string, Trunk>(StringComparer.Ordinal);
        foreach (var trunk in context.Planting.Trunks)
        {
            trunks.TryAdd(trunk.Name, trunk);
        }

        var widest = new Dictionary<string, (LocalDate Date, Stated<Length> Diameter)>(StringComparer.Ordinal);
        var isSouthern = context.Planting.Site?.IsSouthern ?? false;
        var later = 0;
        Origin? firstLater = null;
        foreach (var day in context.Planting.Measured.OrderBy(day => day.Date))
        {
            if (day.Date > context.State.Date)
            {
                later++;
                firstLater ??= day.Origin;
            }

            foreach (var reading in day.Readings)
            {
                if (trunks.TryGetValue(reading.Trunk, out var trunk) && Impossible(context, trunk, day.Date, reading, isSouthern) is { } odd)
                {
                    yield return odd;
                }

                if (reading.Diameter is not { } diameter)
                {
                    continue;
                }

                if (!widest.TryGetValue(reading.Trunk, out var before))
                {
                    widest[reading.Trunk] = (day.Date, diameter);
                }
                else if (Shrank(before.Diameter.Value, diameter.Value))
                {
                    yield return Shrinking(context, reading, before, diameter, day.Date);
                }
                else if (diameter.Value.Nanometres >= before.Diameter.Value.Nanometres)
                {
                    widest[reading.Trunk] = (day.Date, diameter);
                }
            }
        }

        if (firstLater is { } origin)
        {
            yield return Told(context, origin, $"{(later == 1 ? "These readings are" : $"The readings of {later} days are")} later than {LocalDatePattern.Iso.Format(context.State.Date!.Value)}, the day that is judged, and not yet counted.");
        }
    }

    private static bool Shrank(Length before, Length now) =>
        before.Nanometres - now.Nanometres > Math.Max(Length.NanometresPerMillimetre, before.Nanometres * Allowance);

    private Finding? Impossible(CheckContext context, Trunk trunk, LocalDate date, TrunkReading reading, bool isSouthern)
    {
        if (trunk.Raised is { } raised && date.Year < raised.Value)
        {
            return Told(context, reading.Origin, $"{Wording.Name(trunk.Name)} was read on {LocalDatePattern.Iso.Format(date)}, before {raised.Value}, the year in which it was raised: check the date and the name.") with
            {
                Trunks = [trunk.Name],
                Related = [new RelatedPlace(context.Origins.Locate(raised.Origin), "when it was raised")],
            };
        }

        return trunk.Removed is { } removed && SeasonCalendar.Days(removed.Value, isSouthern) is { } gone && date > gone.End
            ? Told(context, reading.Origin, $"{Wording.Name(trunk.Name)} was read on {LocalDatePattern.Iso.Format(date)}, after it was removed: check the date and the name.") with
            {
                Trunks = [trunk.Name],
                Related = [new RelatedPlace(context.Origins.Locate(removed.Origin), "when it was removed")],
            }
            : null;
    }

    private Finding Shrinking(CheckContext context, TrunkReading reading, (LocalDate Date, Stated<Length> Diameter) before, Stated<Length> now, LocalDate date) =>
        Told(
            context,
            now.Origin,
            $"{Wording.Name(reading.Trunk)} read {LengthWording.Say(now.Value, context.Units)} on {LocalDatePattern.Iso.Format(date)} but {LengthWording.Say(before.Diameter.Value, context.Units)} on {LocalDatePattern.Iso.Format(before.Date)}: a trunk does not get thinner, so check both readings.") with
        {
            Trunks = [reading.Trunk],
            Measured = now.Value.Millimetres,
            Limit = before.Diameter.Value.Millimetres,
            Unit = "mm",
            Related = [new RelatedPlace(context.Origins.Locate(before.Diameter.Origin), "the earlier reading")],
        };

    private Finding Told(CheckContext context, Origin origin, string message) => new()
    {
        Check = Description,
        Severity = Description.Severity,
        Place = context.Origins.Locate(origin),
        Message = message,
    };
}
