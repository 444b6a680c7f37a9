namespace GroveSpec.Craft.Calendar;

/// <summary>Why a task has no date.</summary>
public enum UndatedReason
{
    /// <summary>The file says no time.</summary>
    NoTime,

    /// <summary>It waits on a task that the file does not have.</summary>
    UnknownTask,

    /// <summary>It waits on a task that has no date itself.</summary>
    WaitsOnUndated,

    /// <summary>It waits, through others or not, on itself.</summary>
    Circle,

    /// <summary>It names a stage of the tree's year that cannot be dated without the site's frost dates, or that this tree does not have.</summary>
    UnknownStage,

    /// <summary>It repeats, but nothing says from when.</summary>
    NoStart,

    /// <summary>What is said of its time cannot all hold, by itself or with what others say.</summary>
    Contradiction,

    /// <summary>It falls outside the years that can be reckoned with.</summary>
    OutOfCalendar,
}
