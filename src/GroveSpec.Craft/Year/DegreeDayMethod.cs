namespace GroveSpec.Craft.Year;

/// <summary>Which of the two readings of one equation is meant. Source: G. S. McMaster and W. W. Wilhelm, Growing degree-days: one equation, two interpretations, Agricultural and Forest Meteorology 87 (1997).</summary>
public enum DegreeDayMethod
{
    /// <summary>The mean of the day's lowest and highest is taken first, and then held at the base if it is below.</summary>
    MeanFirst,

    /// <summary>The lowest and the highest are each held between base and cap first, and their mean is taken then.</summary>
    LimitsFirst,
}
