namespace GroveSpec.Model.Species;

/// <summary>When a species carries leaves.</summary>
public enum LeafHabit
{
    /// <summary>Bare in winter, broad leaves.</summary>
    Deciduous,

    /// <summary>Bare in winter, needles.</summary>
    DeciduousConifer,

    /// <summary>Bare only in hard winters.</summary>
    SemiEvergreen,

    /// <summary>Broad leaves all year.</summary>
    Evergreen,

    /// <summary>Needles or scales all year.</summary>
    Conifer,

    /// <summary>Broad leaves all year, with no cold rest.</summary>
    Tropical,
}
