using GroveSpec.Model.Times;
using NodaTime;

namespace GroveSpec.Craft.Year;

/// <summary>The coming of one stage in one year, with where its days come from.</summary>
public sealed record StageOnset
{
    /// <summary>Which stage.</summary>
    public required Stage Stage { get; init; }

    /// <summary>The earliest and the latest day on which it begins; one day when it was seen.</summary>
    public required DateInterval Days { get; init; }

    /// <summary>What the days rest on.</summary>
    public required StageBasis Basis { get; init; }

    /// <summary>Where the band comes from: a published source, "from memory", "common practice", or "seen".</summary>
    public required string Source { get; init; }

    /// <summary>How many days the band was moved by what was seen, negative to earlier; 0 when it stands as its source has it.</summary>
    public int DaysMoved { get; init; }

    /// <summary>The stage that was seen in the same year and moved it; null when none did.</summary>
    public Stage? MovedBy { get; init; }

    /// <summary>Of how many years the notes moved it, for a year without notes of its own; 0 otherwise.</summary>
    public int YearsOfNotes { get; init; }

    /// <summary>All of this in a sentence or two.</summary>
    public required string Account { get; init; }

    /// <summary>How wide the band is: the days between the earliest and the latest beginning, 0 for one day.</summary>
    public int DaysOfWidth => Days.Length - 1;
}
