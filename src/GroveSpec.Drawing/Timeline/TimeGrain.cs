namespace GroveSpec.Drawing.Timeline;

/// <summary>Into what a timeline is divided, as its span grows.</summary>
internal enum TimeGrain
{
    /// <summary>Months, with years above.</summary>
    Month,

    /// <summary>Seasons, with years above.</summary>
    Season,

    /// <summary>Years alone.</summary>
    Year,
}
