namespace GroveSpec.Craft.Year;

/// <summary>One of the four moments of a year that part the astronomical seasons.</summary>
public enum SolarTurn
{
    /// <summary>The sun crosses the equator northward, in March.</summary>
    MarchEquinox,

    /// <summary>The sun stands furthest north, in June.</summary>
    JuneSolstice,

    /// <summary>The sun crosses the equator southward, in September.</summary>
    SeptemberEquinox,

    /// <summary>The sun stands furthest south, in December.</summary>
    DecemberSolstice,
}
