namespace GroveSpec.Craft.Moving;

/// <summary>What can be amiss with how trunks stand together and a shift of trunks can mend.</summary>
public enum StandFaultKind
{
    /// <summary>Two trunks take up the same ground.</summary>
    Touching,

    /// <summary>A trunk reaches past the rim.</summary>
    OffContainer,

    /// <summary>A trunk stands near the rim.</summary>
    NearRim,

    /// <summary>The largest trunk stands on the container's centre line.</summary>
    CentredMain,

    /// <summary>Thickness runs against the depth that was chosen.</summary>
    DepthReversed,

    /// <summary>Nearer trunks cover a trunk.</summary>
    HiddenTrunk,

    /// <summary>Two gaps from one trunk are as long as each other.</summary>
    EvenGaps,

    /// <summary>Neighbours are as thick as each other.</summary>
    TwinDiameters,

    /// <summary>Neighbours are as tall as each other.</summary>
    TwinHeights,

    /// <summary>A rod passes through three trunks.</summary>
    ThreeInLine,

    /// <summary>Two gaps that follow each other look as long as each other.</summary>
    EvenGapsInView,

    /// <summary>Three tops that follow each other look in line.</summary>
    LevelTops,
}
