using System.Collections.Immutable;
using System.Globalization;
using GroveSpec.Binding.Names;
using GroveSpec.Model.Species;
using GroveSpec.Model.Times;

namespace GroveSpec.Editing.Explaining;

/// <summary>Says what a profile knows of a species, each value with where it comes from.</summary>
internal static class SpeciesLines
{
    /// <summary>The values of a profile.</summary>
    /// <param name="profile">The profile.</param>
    /// <returns>A line a value.</returns>
    public static ImmutableArray<string> Of(SpeciesProfile profile)
    {
        var lines = ImmutableArray.CreateBuilder<string>();
        Add("Botanical name", profile.Botanical, name => name);
        Add("Common name", profile.Common, name => name);
        Add("Leaves", profile.Leaves, habit => Words.LeafHabits[(int)habit]);
        Add("Hardiness", profile.Hardiness, zones => $"zones {zones.Coldest} to {zones.Warmest}");
        Add("Growth", profile.Growth, pace => Words.Paces[(int)pace]);
        Add("Flush", profile.Flush, flush => Words.Flushes[(int)flush]);
        Add("Strain of a bend that is commonly dared", profile.BendLimit, limit => string.Create(CultureInfo.InvariantCulture, $"{limit.Percent:0.##} %"));
        foreach (var stage in profile.Stages)
        {
            lines.Add($"{StageWord(stage.Stage)}: {Days(stage.Earliest, stage.Anchor)} to {Days(stage.Latest, stage.Anchor)} ({stage.Source})");
        }

        foreach (var caution in profile.Cautions)
        {
            lines.Add($"Caution: {caution.Value} ({caution.Source})");
        }

        return lines.ToImmutable();

        void Add<T>(string what, Sourced<T>? sourced, Func<T, string> say)
        {
            if (sourced is { } value)
            {
                lines.Add($"{what}: {say(value.Value)} ({value.Source})");
            }
        }
    }

    private static string StageWord(Stage stage)
    {
        var word = Words.Stages[(int)stage];
        return string.Concat(char.ToUpperInvariant(word[0]).ToString(), word.AsSpan(1));
    }

    private static string Days(int days, FrostAnchor anchor)
    {
        var day = anchor switch
        {
            FrostAnchor.LastFrost => "the last frost",
            FrostAnchor.FirstFrost => "the first frost",
            _ => "the solstice",
        };
        return days == 0 ? $"at {day}" : string.Create(CultureInfo.InvariantCulture, $"{Math.Abs(days)} days {(days < 0 ? "before" : "after")} {day}");
    }
}
