using System.Collections.Immutable;
using GroveSpec.Binding.Names;
using GroveSpec.Binding.Origins;
using GroveSpec.Checks;
using GroveSpec.Model;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.Sites;
using GroveSpec.Model.Species;
using GroveSpec.Syntax.Tree;

namespace GroveSpec.Binding.Statements;

/// <summary>Binds species profiles.</summary>
/// <param name="scope">The file.</param>
internal sealed class ProfileBinder(BindingScope scope)
{
    /// <summary>What a value says of its source when the file does not.</summary>
    private const string NoSource = "no source given";

    /// <summary>Binds a profile.</summary>
    /// <param name="statement">The statement.</param>
    /// <param name="name">The species' name.</param>
    /// <returns>The profile, with what could be taken.</returns>
    public SpeciesProfile Bind(Statement.Profile statement, NameSyntax name)
    {
        var origin = scope.Origin("profile:" + OriginTable.Piece(name.Text), statement);
        var profile = new SpeciesProfile { Name = name.Text, Origin = origin };
        var stages = ImmutableArray.CreateBuilder<StageBand>();
        var cautions = ImmutableArray.CreateBuilder<Sourced<string>>();
        var counts = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var entry in statement.Entries)
        {
            var keyword = entry.Keyword.Text;
            var count = counts[keyword] = counts.GetValueOrDefault(keyword) + 1;
            var own = origin.Part(PartPlaces.Repeated(keyword, count));
            var source = entry.Source?.Value is { } given && !given.AsSpan().Trim().IsEmpty ? given : NoSource;
            switch (keyword)
            {
                case "caution":
                    if (entry.Values is [TextSyntax caution, ..])
                    {
                        cautions.Add(new(caution.Value, source, own));
                    }

                    break;
                case "stage":
                    if (Band(entry, source, own) is { } band && !IsSaid(stages, band, entry))
                    {
                        stages.Add(band);
                    }

                    break;
                default:
                    if (count > 1)
                    {
                        scope.Tell(FileDescriptions.SaidTwice, entry.Span, $"\"{keyword}\" was said already of {Saying.Short(name.Text)}, and the first holds; take one of the two out.");
                        break;
                    }

                    profile = WithEntry(profile, entry, source, own);
                    break;
            }
        }

        return profile with { Stages = stages.ToImmutable(), Cautions = cautions.ToImmutable() };
    }

    private SpeciesProfile WithEntry(SpeciesProfile profile, ProfileEntrySyntax entry, string source, Origin origin)
    {
        switch (entry.Keyword.Text, entry.Values)
        {
            case ("botanical", [TextSyntax text, ..]):
                return profile with { Botanical = new(text.Value, source, origin) };
            case ("common", [TextSyntax text, ..]):
                return profile with { Common = new(text.Value, source, origin) };
            case ("leaves", [NameSyntax word, ..]):
                return Choose(word, "a leaf habit", Words.LeafHabits) is { } leaves ? profile with { Leaves = new((LeafHabit)leaves, source, origin) } : profile;
            case ("growth", [NameSyntax word, ..]):
                return Choose(word, "a pace of growth", Words.Paces) is { } pace ? profile with { Growth = new((GrowthPace)pace, source, origin) } : profile;
            case ("flush", [NameSyntax word, ..]):
                return Choose(word, "a flush", Words.Flushes) is { } flush ? profile with { Flush = new((Flush)flush, source, origin) } : profile;
            case ("hardiness", [NameSyntax coldest, NameSyntax warmest, ..]):
                return Zones(coldest, warmest) is { } range ? profile with { Hardiness = new(range, source, origin) } : profile;
            case ("bend-limit", [QuantitySyntax share, ..]):
                return scope.Quantities.Share(share, "The limit of bending") is { } limit ? profile with { BendLimit = new(limit, source, origin) } : profile;
            default:
                return profile;
        }
    }

    private ZoneRange? Zones(NameSyntax coldest, NameSyntax warmest)
    {
        if (Zone(coldest) is not { } cold || Zone(warmest) is not { } warm)
        {
            return null;
        }

        if (cold.Number < warm.Number || (cold.Number == warm.Number && !(cold.Half == 'b' && warm.Half == 'a')))
        {
            return new ZoneRange(cold, warm);
        }

        scope.Tell(FileDescriptions.EndsBeforeStart, warmest.Span, $"The zones run from the coldest to the warmest: write {warm} to {cold}.");
        return null;
    }

    private HardinessZone? Zone(NameSyntax word)
    {
        if (SiteBinder.ZoneOf(word.Text) is { } zone)
        {
            return zone;
        }

        if (!scope.IsTold(word.Span))
        {
            scope.Tell(FileDescriptions.OutOfRange, word.Span, $"\"{Saying.Short(word.Text)}\" is no hardiness zone: they run from 1 to 13, each with a colder half a and a warmer half b, such as 8b.");
        }

        return null;
    }

    private StageBand? Band(ProfileEntrySyntax entry, string source, Origin origin)
    {
        if (entry.Values is not [NameSyntax word, QuantitySyntax first, NameSyntax firstSide, NameSyntax firstAnchor, QuantitySyntax last, NameSyntax lastSide, NameSyntax lastAnchor])
        {
            return null;
        }

        if (scope.Dates.Stage(word) is not { } stage || Days(first, firstSide) is not { } earliest || Days(last, lastSide) is not { } latest)
        {
            return null;
        }

        if (firstAnchor.Text != lastAnchor.Text)
        {
            scope.Tell(FileDescriptions.Contradiction, lastAnchor.Span, $"Both ends of a stage are counted from one day of the year, but here are {firstAnchor.Text} and {lastAnchor.Text}.", firstAnchor.Text);
            return null;
        }

        if (earliest > latest)
        {
            scope.Tell(FileDescriptions.EndsBeforeStart, entry.Span, $"The stage {word.Text} would be over before it begins: turn the two ends round.");
            return null;
        }

        var anchor = firstAnchor.Text switch
        {
            "last frost" => FrostAnchor.LastFrost,
            "first frost" => FrostAnchor.FirstFrost,
            _ => FrostAnchor.Solstice,
        };
        return new StageBand(stage, anchor, earliest, latest, source, origin);
    }

    private int? Days(QuantitySyntax quantity, NameSyntax side)
    {
        if (scope.Quantities.Time(quantity, "The time", 0) is not { } time)
        {
            return null;
        }

        var days = time.Unit switch
        {
            TimeUnit.Days => (long)time.Count,
            TimeUnit.Weeks => time.Count * 7L,
            _ => long.MaxValue,
        };
        if (days <= 366)
        {
            return side.Text == "before" ? -(int)days : (int)days;
        }

        scope.Tell(FileDescriptions.OutOfRange, quantity.Span, "A stage is counted in days or weeks, within a year of the day it is counted from.");
        return null;
    }

    private bool IsSaid(ImmutableArray<StageBand>.Builder stages, StageBand band, ProfileEntrySyntax entry)
    {
        foreach (var other in stages)
        {
            if (other.Stage == band.Stage)
            {
                scope.Tell(FileDescriptions.SaidTwice, entry.Span, $"The stage {Words.Stages[(int)band.Stage]} was given already, and the first holds; take one of the two out.");
                return true;
            }
        }

        return false;
    }

    private int? Choose(NameSyntax word, string what, IReadOnlyList<string> words)
    {
        var index = Words.IndexOf(words, word.Text);
        if (index >= 0)
        {
            return index;
        }

        scope.TellWord(word, what, words);
        return null;
    }
}
