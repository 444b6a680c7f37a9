using GroveSpec.Model.Quantities;
using GroveSpec.Model.Readings;

namespace GroveSpec.Craft.Survey;

/// <summary>A reading and how it fits.</summary>
/// <param name="Reading">The reading.</param>
/// <param name="Kind">How it fits.</param>
/// <param name="Fitted">What it should have read by the places found, between bark where it was read so; null where those are not known.</param>
public sealed record SurveyedReading(TapeReading Reading, SurveyedReadingKind Kind, Length? Fitted)
{
    /// <summary>What it should have read if a trunk of it stands at the other of two places that all else leaves it; null where there is one place only, or both are as far.</summary>
    public Length? OtherFitted { get; init; }

    /// <summary>By how much it reads too long, negative for too short; null where that is not known.</summary>
    public Length? Misfit => Fitted is { } fitted ? Reading.Distance - fitted : null;
}
