namespace GroveSpec.Craft.Calendar;

/// <summary>How near a task is, seen from a day. The first that fits is the one.</summary>
public enum AgendaTerm
{
    /// <summary>Its last day, or a turn of it, is over, and it is not done.</summary>
    Overdue,

    /// <summary>It may be done on the day.</summary>
    Now,

    /// <summary>It begins later in the day's month.</summary>
    Month,

    /// <summary>It begins later in the day's season.</summary>
    Season,

    /// <summary>It begins later in the day's calendar year.</summary>
    Year,

    /// <summary>It begins after all of these; where there is no day to see it from, whenever it begins.</summary>
    Later,

    /// <summary>It has no date.</summary>
    Undated,

    /// <summary>It is done, or its time is over with nothing left to do.</summary>
    Done,
}
