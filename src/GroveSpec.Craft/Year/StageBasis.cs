namespace GroveSpec.Craft.Year;

/// <summary>What the days of a stage rest on.</summary>
public enum StageBasis
{
    /// <summary>It was seen.</summary>
    Seen,

    /// <summary>The profile of the species has a band for it.</summary>
    Profile,

    /// <summary>Common practice for trees that carry leaves as this one does.</summary>
    LeafHabit,
}
