using System.Collections.Immutable;
using System.Globalization;
using GroveSpec.Binding.Names;
using GroveSpec.Checks;
using GroveSpec.Model;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.Sites;
using GroveSpec.Syntax.Tree;
using NodaTime;

namespace GroveSpec.Binding.Statements;

/// <summary>Binds where a planting is kept.</summary>
/// <param name="scope">The file.</param>
internal sealed class SiteBinder(BindingScope scope)
{
    /// <summary>Reads a hardiness zone such as 8b.</summary>
    /// <param name="text">As written.</param>
    /// <returns>The zone; null where it is none.</returns>
    public static HardinessZone? ZoneOf(string text)
    {
        var digits = text.AsSpan();
        char? half = null;
        if (digits.Length > 0 && digits[^1] is 'a' or 'b')
        {
            half = digits[^1];
            digits = digits[..^1];
        }

        return digits.Length is 1 or 2 && int.TryParse(digits, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number is >= 1 and <= 13
            ? new HardinessZone(number, half)
            : null;
    }

    /// <summary>Binds a site.</summary>
    /// <param name="statement">The statement.</param>
    /// <param name="origin">Its origin.</param>
    /// <returns>The site, with what could be taken.</returns>
    public Site Bind(Statement.Site statement, Origin origin)
    {
        var once = new OnlyOnce(scope, "the site");
        var site = new Site { Origin = origin };
        Clause? frost = null;
        foreach (var clause in statement.Clauses)
        {
            if (!once.Take(clause))
            {
                continue;
            }

            switch (clause)
            {
                case Clause.Latitude latitude:
                    site = site with { Latitude = Latitude(latitude) is { } angle ? new(angle, origin.Part("latitude")) : null };
                    break;
                case Clause.Zone zone:
                    site = site with { Zone = Zone(zone.Value) is { } value ? new(value, origin.Part("zone")) : null };
                    break;
                case Clause.Frost { IsLast: true } last:
                    frost = last;
                    site = site with { LastFrost = scope.Dates.Annual(last.Date, "The last frost") is { } day ? new(day, origin.Part("last-frost")) : null };
                    break;
                case Clause.Frost first:
                    frost = first;
                    site = site with { FirstFrost = scope.Dates.Annual(first.Date, "The first frost") is { } annual ? new(annual, origin.Part("first-frost")) : null };
                    break;
                case Clause.Means means:
                    site = site with { MonthlyMeans = Means(means) is { } twelve ? new(twelve, origin.Part("means")) : null };
                    break;
                case Clause.Sun sun:
                    site = site with { SunFrom = scope.Quantities.Bearing(sun.From, "The bearing of the sun") is { } from ? new(from, origin.Part("sun")) : null };
                    break;
                default:
                    break;
            }
        }

        CheckFrosts(site, frost);
        return site;
    }

    private Angle? Latitude(Clause.Latitude latitude)
    {
        if (scope.Quantities.Angle(latitude.Quantity, "The latitude", -90, 90, isMostIncluded: true) is not { } angle)
        {
            return null;
        }

        if (latitude.Hemisphere is not { } word)
        {
            return angle;
        }

        var isSouth = word.Text is "S" or "s" or "south";
        if (!isSouth && word.Text is not ("N" or "n" or "north"))
        {
            scope.TellWord(word, "a half of the globe", ["N", "S"]);
            return null;
        }

        if (angle.Degrees < 0)
        {
            scope.Tell(FileDescriptions.Contradiction, latitude.Span, $"The latitude has a minus sign and {word.Text}: write {-angle.Degrees} S for a place south of the equator, {-angle.Degrees} N for one north of it.");
            return null;
        }

        return isSouth && angle.Degrees != 0 ? new Angle(-angle.Degrees) : angle;
    }

    private HardinessZone? Zone(NameSyntax value)
    {
        if (ZoneOf(value.Text) is { } zone)
        {
            return zone;
        }

        if (!scope.IsTold(value.Span))
        {
            scope.Tell(FileDescriptions.OutOfRange, value.Span, $"\"{Saying.Short(value.Text)}\" is no hardiness zone: they run from 1 to 13, each with a colder half a and a warmer half b, such as 8b.");
        }

        return null;
    }

    private ImmutableArray<Temperature>? Means(Clause.Means means)
    {
        if (means.Temperatures.Length != 12)
        {
            if (!scope.IsTold(means.Span))
            {
                scope.Tell(FileDescriptions.OutOfRange, means.Span, $"Here are {means.Temperatures.Length} monthly means, but a year has twelve, January first.");
            }

            return null;
        }

        var temperatures = new Temperature[12];
        NameSyntax? unit = null;
        var areAllKnown = true;
        for (var month = 11; month >= 0; month--)
        {
            unit = means.Temperatures[month].Unit ?? unit;
            var mean = scope.Quantities.Temperature(means.Temperatures[month], $"The mean of {Words.Months[month]}", unit);
            areAllKnown &= mean is not null;
            temperatures[month] = mean ?? default;
        }

        return areAllKnown ? [.. temperatures] : null;
    }

    /// <summary>North of the equator the last frost comes in spring and the first in autumn of one year; south of it the other way round.</summary>
    private void CheckFrosts(Site site, Clause? frost)
    {
        if (frost is null || site.LastFrost is not { } last || site.FirstFrost is not { } first)
        {
            return;
        }

        var order = last.Value.CompareTo(first.Value);
        if (site.IsSouthern ? order > 0 : order < 0)
        {
            return;
        }

        scope.Tell(
            FileDescriptions.Contradiction,
            frost.Span,
            site.Latitude is null
                ? $"The last frost ({Say(last.Value)}) comes after the first ({Say(first.Value)}), so there is no season between them. Turn them round, or give the latitude if the place lies south of the equator."
                : $"At this latitude the season lies between a last frost in {(site.IsSouthern ? "the second" : "the first")} half of the year and the first frost after it, but the last is {Say(last.Value)} and the first {Say(first.Value)}: turn them round.");
    }

    private static string Say(AnnualDate date) => string.Create(CultureInfo.InvariantCulture, $"{date.Day} {Words.Months[date.Month - 1]}");
}
