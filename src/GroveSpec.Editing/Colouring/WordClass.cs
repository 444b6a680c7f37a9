namespace GroveSpec.Editing.Colouring;

/// <summary>What a word is, as far as its colour goes.</summary>
public enum WordClass
{
    /// <summary>A word of the language.</summary>
    Keyword,

    /// <summary>A trunk's name.</summary>
    Trunk,

    /// <summary>A role's name.</summary>
    Role,

    /// <summary>A task's name.</summary>
    Task,

    /// <summary>A species' name.</summary>
    Species,

    /// <summary>A check's name.</summary>
    Check,

    /// <summary>A word chosen among known ones, such as a kind of work, a season or a stage.</summary>
    Choice,

    /// <summary>A number or a date.</summary>
    Number,

    /// <summary>A unit.</summary>
    Unit,

    /// <summary>A text in quotes.</summary>
    Text,

    /// <summary>A comment.</summary>
    Comment,
}
