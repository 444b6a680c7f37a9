namespace GroveSpec.Craft.Survey;

/// <summary>How well a trunk's place is known after a survey.</summary>
public enum SurveyedPlaceKind
{
    /// <summary>The file says it.</summary>
    Known,

    /// <summary>The readings give it, in the file's own axes.</summary>
    Found,

    /// <summary>The readings give it in axes that were chosen, because too few known places turn or place the whole.</summary>
    InChosenAxes,

    /// <summary>The readings leave two places.</summary>
    OneOfTwo,

    /// <summary>It depends on which of several readings is wrong.</summary>
    Doubtful,

    /// <summary>The readings leave it free.</summary>
    Free,
}
