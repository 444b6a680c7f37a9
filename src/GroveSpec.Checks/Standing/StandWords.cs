using System.Collections.Immutable;
using GroveSpec.Craft.Stand;
using GroveSpec.Model.Quantities;

namespace GroveSpec.Checks.Standing;

/// <summary>Forestry's numbers in a grower's words. Names stand in them as the file writes them.</summary>
public static class StandWords
{
    /// <summary>What is said where fewer than two trunks stand and have a place.</summary>
    public const string TooFew = "Spacing begins with two trunks that stand and have a place, sizes with three: there is nothing to tell yet.";

    private const int NeighboursAsked = 4;

    // Two numbers that are told apart differ by more than 1e-9 (see ChanceBand): with as many decimals they never read alike.
    private const int MostDecimals = 9;

    /// <summary>The name of an index as programs read it.</summary>
    /// <param name="kind">Which.</param>
    /// <returns>A word.</returns>
    public static string Word(StandIndexKind kind) => kind switch
    {
        StandIndexKind.ClarkEvans => "clarkEvans",
        StandIndexKind.UniformAngle => "uniformAngle",
        StandIndexKind.SizeDifferentiation => "sizeDifferentiation",
        StandIndexKind.SizeDominance => "sizeDominance",
        _ => "basalAreaGini",
    };

    /// <summary>A reading as programs read it.</summary>
    /// <param name="reading">Which.</param>
    /// <returns>A word.</returns>
    public static string Word(StandReading reading) => reading switch
    {
        StandReading.Below => "below",
        StandReading.Above => "above",
        _ => "cannot tell",
    };

    /// <summary>What an index is about.</summary>
    /// <param name="kind">Which.</param>
    /// <returns>One or two words.</returns>
    public static string Heading(StandIndexKind kind) => kind switch
    {
        StandIndexKind.ClarkEvans => "Spacing",
        StandIndexKind.UniformAngle => "All round",
        StandIndexKind.SizeDifferentiation => "Neighbours",
        StandIndexKind.SizeDominance => "Rulers",
        _ => "Shares",
    };

    /// <summary>What the least and the greatest value of an index stand for, to be read at the ends of its scale.</summary>
    /// <param name="kind">Which index.</param>
    /// <returns>A few words each. Spacing has no greatest value: its word says which way it leads.</returns>
    public static (string Least, string Greatest) Ends(StandIndexKind kind) => kind switch
    {
        StandIndexKind.ClarkEvans => ("trunks crowd", "trunks keep apart"),
        StandIndexKind.UniformAngle => ("neighbours all round", "all to one side"),
        StandIndexKind.SizeDifferentiation => ("all alike", "as different as can be"),
        StandIndexKind.SizeDominance => ("no thicker neighbours", "only thicker neighbours"),
        _ => ("all alike", "one trunk has all"),
    };

    /// <summary>The value of an index as it is told.</summary>
    /// <param name="index">The index.</param>
    /// <returns>The number with two decimals, or with as many as tell it from the limit of chance beyond which it lies; an empty text where it has no value.</returns>
    public static string Value(StandIndex index)
    {
        ArgumentNullException.ThrowIfNull(index);
        return index.Value is { } value ? Say(Told(index, value), Decimals(index)) : "";
    }

    /// <summary>Why an index tells nothing of a planting, however its trunks stand.</summary>
    /// <param name="described">The planting.</param>
    /// <param name="kind">Which index.</param>
    /// <returns>A sentence; an empty text where it can be laid beside chance.</returns>
    public static string WhyNot(StandDescription described, StandIndexKind kind)
    {
        ArgumentNullException.ThrowIfNull(described);
        return described.Index(kind) is not { Value: not null, Chance: not null } ? $"Cannot tell: {Lack(described, kind)}"
            : kind == StandIndexKind.SizeDominance && described.Sized.Length == NeighboursAsked + 1 ? $"Cannot tell: each of five trunks{(described.Stems.Length > described.Sized.Length ? " whose thickness is known" : "")} has all the others for neighbours, however they stand."
            : "";
    }

    /// <summary>An index and what it tells.</summary>
    /// <param name="described">The planting.</param>
    /// <param name="kind">Which index.</param>
    /// <returns>Sentences.</returns>
    public static string Tell(StandDescription described, StandIndexKind kind)
    {
        ArgumentNullException.ThrowIfNull(described);
        var index = described.Index(kind);
        if (WhyNot(described, kind) is { Length: > 0 } why)
        {
            return index.Value is null || index.Chance is null ? why : $"{why} {Rulers(described)}";
        }

        var decimals = Decimals(index);
        var numbers = $"{Name(kind)} is {Value(index)}; chance gives {Say(index.Chance!.Low, decimals)} to {Say(index.Chance.High, decimals)}";
        return $"{Verdict(kind, index.Reading)} {numbers}. {Scale(described, kind)}";
    }

    /// <summary>The real stands beside an index; nothing where no such number was taken of them.</summary>
    /// <param name="kind">Which index.</param>
    /// <returns>A sentence, or an empty text.</returns>
    public static string RealStands(StandIndexKind kind)
    {
        var told = NaturalStand.All.Where(stand => stand.ValueOf(kind) is not null).Select(stand => $"{stand.Name} {Say(stand.ValueOf(kind)!.Value)}").ToArray();
        return told.Length == 0 ? "" : $"Real stands{Condition(kind)}: {string.Join(", ", told)}.";
    }

    /// <summary>How far it is from each trunk to its nearest.</summary>
    /// <param name="described">The planting, with at least two stems.</param>
    /// <param name="units">The units to speak in.</param>
    /// <returns>A sentence.</returns>
    public static string Nearest(StandDescription described, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(described);
        var (least, greatest) = (described.Nearest.MinBy(one => one.Distance), described.Nearest.MaxBy(one => one.Distance));
        var mean = LengthWording.Say(described.MeanNearest!.Value, units);
        return described.Nearest.Length > 2 && least.Distance == greatest.Distance
            ? $"From each trunk to its nearest it is {mean}, centre to centre."
            : described.Nearest.Length == 2
            ? $"From {least.Stem.Name} to {least.Nearest.Name} it is {LengthWording.Say(least.Distance, units)} from centre to centre."
            : $"From a trunk to its nearest it is {mean} on average, centre to centre: {LengthWording.Say(least.Distance, units)} from {least.Stem.Name} to {least.Nearest.Name}, {LengthWording.Say(greatest.Distance, units)} from {greatest.Stem.Name} to {greatest.Nearest.Name}.";
    }

    /// <summary>How many of the numbers can be told from chance, and which.</summary>
    /// <param name="described">The planting.</param>
    /// <returns>A sentence.</returns>
    public static string Sum(StandDescription described)
    {
        ArgumentNullException.ThrowIfNull(described);
        string[] told = [.. described.Indices.Where(index => index.Reading != StandReading.CannotTell).Select(index => Heading(index.Kind).ToLowerInvariant())];
        return told.Length == 0
            ? "Nothing in the numbers below can be told from chance."
            : $"{(told.Length == 1 ? "One of the numbers below can" : $"{told.Length} of the numbers below can")} be told from chance: {Wording.Row(told)}.";
    }

    /// <summary>What all of it is about, to stand behind a planting's name.</summary>
    /// <param name="described">The planting.</param>
    /// <returns>Such as "how its 9 trunks stand".</returns>
    public static string Heading(StandDescription described)
    {
        ArgumentNullException.ThrowIfNull(described);
        return described.Stems.Length == 1 ? "how its one trunk stands" : $"how its {described.Stems.Length} trunks stand";
    }

    /// <summary>Which trunks were left out, and why.</summary>
    /// <param name="described">The planting.</param>
    /// <returns>A sentence for those without a place and one for those without a thickness, empty where none was left out.</returns>
    public static ImmutableArray<string> LeftOut(StandDescription described)
    {
        ArgumentNullException.ThrowIfNull(described);
        var told = ImmutableArray.CreateBuilder<string>(2);
        if (!described.Unplaced.IsEmpty)
        {
            told.Add($"Left out, because the file gives no place: {Wording.Row([.. described.Unplaced.Select(trunk => trunk.Name)])}.");
        }

        if (described.Sized.Length < described.Stems.Length)
        {
            told.Add($"Left out of what is told of sizes, because the file gives no thickness: {Wording.Row([.. described.Stems.Except(described.Sized).Select(trunk => trunk.Name)])}.");
        }

        return told.ToImmutable();
    }

    /// <summary>How chance was tried, and what to make of it.</summary>
    /// <param name="described">The planting.</param>
    /// <returns>Sentences; an empty text where no index could be laid beside chance.</returns>
    public static string Chance(StandDescription described)
    {
        ArgumentNullException.ThrowIfNull(described);
        return described.Indices.FirstOrDefault(index => index.Chance is not null)?.Chance is not { } chance ? ""
            : $"What chance gives was tried {chance.Runs} times with as many trunks, and is told as nineteen of twenty tries had it: for spacing with trunks dropped anywhere {(described.Ground.IsContainer ? "in the container" : "on such ground")}, for neighbours with these thicknesses handed out anew, for shares with thicknesses drawn from a usual spread. None of it is right or wrong. The real stands have 62 to 126 trunks and run from crowded to orderly; so few trunks can be natural and look like any of them.";
    }

    /// <summary>All that is told of a planting, one after the other.</summary>
    /// <param name="described">The planting.</param>
    /// <param name="units">The units to speak in.</param>
    /// <returns>Sentences for what is nearest, for each index with its heading before it, for what was left out, and for chance; that there is too little, where fewer than two stems stand.</returns>
    public static ImmutableArray<string> Sentences(StandDescription described, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(described);
        if (described.Stems.Length < 2)
        {
            return [TooFew, .. LeftOut(described)];
        }

        var chance = Chance(described);
        return
        [
            $"{Nearest(described, units)} {Sum(described)}",
            .. described.Indices.Select(index => $"{Heading(index.Kind)}: {Tell(described, index.Kind)}{(index.Value is not null && RealStands(index.Kind) is { Length: > 0 } stands ? $" {stands}" : "")}"),
            .. LeftOut(described),
            .. chance.Length > 0 ? [chance] : Array.Empty<string>(),
        ];
    }

    private static string Condition(StandIndexKind kind) => kind switch
    {
        StandIndexKind.ClarkEvans => ", where chance gives 1",
        StandIndexKind.SizeDifferentiation => ", by their heights",
        _ => "",
    };

    /// <summary>How many decimals tell a value from the limit of chance beyond which it lies: two where that is enough, or where it lies beyond none.</summary>
    private static int Decimals(StandIndex index)
    {
        var limit = index.Reading switch
        {
            StandReading.Below => index.Chance!.Low,
            StandReading.Above => index.Chance!.High,
            _ => (double?)null,
        };
        var decimals = 2;
        while (limit is { } other && decimals < MostDecimals && Say(index.Value!.Value, decimals) == Say(other, decimals))
        {
            decimals++;
        }

        return decimals;
    }

    /// <summary>A value at a limit of chance, but for rounding, is that limit: else a limit such as 0.125 could be told as less than what lies at it.</summary>
    private static double Told(StandIndex index, double value) =>
        index is { Reading: StandReading.CannotTell, Chance: { } chance } ? Math.Clamp(value, chance.Low, chance.High) : value;

    private static string Say(double value, int decimals = 2) => value.ToString($"F{decimals}", System.Globalization.CultureInfo.InvariantCulture);

    private static string Name(StandIndexKind kind) => kind switch
    {
        StandIndexKind.ClarkEvans => "The index of Clark and Evans, after Donnelly,",
        StandIndexKind.UniformAngle => "The uniform angle index",
        StandIndexKind.SizeDifferentiation => "The size differentiation",
        StandIndexKind.SizeDominance => "The mean dominance",
        _ => "The Gini coefficient of basal area, corrected for few trunks,",
    };

    private static string Verdict(StandIndexKind kind, StandReading reading) => (kind, reading) switch
    {
        (StandIndexKind.ClarkEvans, StandReading.Below) => "The trunks crowd together more than chance would have them.",
        (StandIndexKind.ClarkEvans, StandReading.Above) => "The trunks keep apart more evenly than chance would have them.",
        (StandIndexKind.UniformAngle, StandReading.Below) => "Neighbours stand more evenly round each trunk than chance would have them.",
        (StandIndexKind.UniformAngle, StandReading.Above) => "Neighbours stand more to one side of each trunk than chance would have them.",
        (StandIndexKind.SizeDifferentiation, StandReading.Below) => "Nearest neighbours are more alike in thickness than the same trunks would be in other places.",
        (StandIndexKind.SizeDifferentiation, StandReading.Above) => "Nearest neighbours differ more in thickness than the same trunks would in other places.",
        (StandIndexKind.SizeDominance, StandReading.Below) => "Fewer trunks stand beside thicker ones than if the same trunks changed places.",
        (StandIndexKind.SizeDominance, StandReading.Above) => "More trunks stand beside thicker ones than if the same trunks changed places: the thick ones are at the heart of the others.",
        (StandIndexKind.BasalAreaGini, StandReading.Below) => "The trunks are more alike in thickness than in a usual spread.",
        (StandIndexKind.BasalAreaGini, StandReading.Above) => "A few trunks have more of the wood than in a usual spread.",
        (StandIndexKind.BasalAreaGini, _) => "Cannot tell it from a usual spread of thicknesses.",
        _ => "Cannot tell it from chance.",
    };

    private static string Scale(StandDescription described, StandIndexKind kind) => kind switch
    {
        StandIndexKind.ClarkEvans when described.Ground.IsContainer => "Under 1 trunks crowd, over 1 they keep apart.",
        StandIndexKind.ClarkEvans when described.Ground.Origin == StandGroundOrigin.NoContainer => "No container is named, so this is over the ground that the trunks enclose, where few trunks have more than 1 by chance too.",
        StandIndexKind.ClarkEvans => $"The trunks of a {(described.Ground.Origin == StandGroundOrigin.Raft ? "raft rise from one laid trunk" : "clump rise from one base")}, so this is over the ground that they enclose, where few trunks have more than 1 by chance too.",
        StandIndexKind.UniformAngle => "The lower, the more evenly four neighbours stand all round; the higher, the more to one side.",
        StandIndexKind.SizeDifferentiation => "0 is all alike, 1 as different as can be.",
        StandIndexKind.SizeDominance => Rulers(described),
        _ => "0 is all alike, 1 one trunk has all.",
    };

    private static string Rulers(StandDescription described)
    {
        var (over, under) = (Names(0), Names(1));
        return (over.Length, under.Length) switch
        {
            (0, 0) => "No trunk is the thickest or the thinnest among its four nearest.",
            (_, 0) => $"At least as thick as all four nearest: {Wording.Row(over)}.",
            (0, _) => $"Thinner than all four nearest: {Wording.Row(under)}.",
            _ => $"At least as thick as all four nearest: {Wording.Row(over)}. Thinner than all four: {Wording.Row(under)}.",
        };

        string[] Names(double share) => [.. described.Sized.Zip(described.Dominance).Where(pair => pair.Second == share).Select(pair => pair.First.Name)];
    }

    private static string Lack(StandDescription described, StandIndexKind kind)
    {
        var (stems, sized) = (described.Stems.Length, described.Sized.Length);
        switch (kind)
        {
            case StandIndexKind.ClarkEvans or StandIndexKind.UniformAngle when stems < 2:
                return "it takes at least two trunks that stand and have a place.";
            case StandIndexKind.ClarkEvans when !described.Outside.IsEmpty:
                return $"{Wording.Row([.. described.Outside.Select(trunk => trunk.Name)])} {(described.Outside.Length == 1 ? "stands" : "stand")} outside the container, where chance scatters none: measure {(described.Outside.Length == 1 ? "its place" : "their places")} again.";
            case StandIndexKind.UniformAngle when stems <= NeighboursAsked:
                return "it asks four neighbours of each trunk, so that it takes five.";
            case StandIndexKind.ClarkEvans when !described.Ground.IsContainer && stems < 4:
                return "three trunks or fewer enclose only themselves; it takes four, or a container for separate trees.";
            case StandIndexKind.ClarkEvans or StandIndexKind.UniformAngle when described.Ground.AreaInSquareMillimetres <= 0:
                return "the trunks stand on one line and enclose no ground.";
            case StandIndexKind.UniformAngle:
                return "two trunks are said to stand at one place, and no direction leads from one to the other.";
            case StandIndexKind.SizeDominance when sized is >= 3 and <= NeighboursAsked:
                return $"it asks four neighbours of each trunk, so that it takes five{(stems > sized ? " whose thickness is known" : "")}.";
            default:
                return "it takes at least three trunks that stand, with a place and a thickness.";
        }
    }
}
