namespace GroveSpec.Editing.Completing;

/// <summary>What a completion stands for.</summary>
public enum CompletionKind
{
    /// <summary>A word of the language.</summary>
    Keyword,

    /// <summary>A whole statement or clause with places to fill in.</summary>
    Form,

    /// <summary>A trunk.</summary>
    Trunk,

    /// <summary>A role.</summary>
    Role,

    /// <summary>A task.</summary>
    Task,

    /// <summary>A species.</summary>
    Species,

    /// <summary>A check.</summary>
    Check,

    /// <summary>A word chosen among known ones.</summary>
    Choice,

    /// <summary>A unit.</summary>
    Unit,
}
