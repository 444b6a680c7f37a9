namespace GroveSpec.Model.Tasks;

/// <summary>What is done to a tree.</summary>
public enum TaskKind
{
    /// <summary>Wire is laid on and the trunk bent.</summary>
    Wire,

    /// <summary>Wire is taken off.</summary>
    Unwire,

    /// <summary>Wire is looked over for biting.</summary>
    LookOver,

    /// <summary>Branches or shoots are cut.</summary>
    Prune,

    /// <summary>Soft tips are taken.</summary>
    Pinch,

    /// <summary>Unwanted buds are rubbed off.</summary>
    Disbud,

    /// <summary>Leaves are taken off.</summary>
    Defoliate,

    /// <summary>A branch is left to grow so that the trunk below it thickens.</summary>
    Sacrifice,

    /// <summary>That branch is taken off.</summary>
    RemoveSacrifice,

    /// <summary>New soil, or a new container.</summary>
    Repot,

    /// <summary>Roots are cut.</summary>
    RootPrune,

    /// <summary>Fertiliser is given.</summary>
    Feed,

    /// <summary>Put under cover from frost, sun or wind.</summary>
    Shelter,

    /// <summary>A graft is made.</summary>
    Graft,

    /// <summary>Wounds are sealed.</summary>
    Seal,

    /// <summary>Sizes are read.</summary>
    Measure,

    /// <summary>Pictures are taken.</summary>
    Photograph,

    /// <summary>Something else, named in words.</summary>
    Other,
}
