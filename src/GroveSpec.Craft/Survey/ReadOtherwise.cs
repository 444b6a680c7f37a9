using GroveSpec.Model.Quantities;
using GroveSpec.Model.States;

namespace GroveSpec.Craft.Survey;

/// <summary>That readings which do not fit would all do so, had they been read the other way: between bark where they are written as read between centres, or the reverse.</summary>
/// <param name="IsBetweenBark">Whether they fit as gaps between bark; else as distances between centres.</param>
/// <param name="Worst">The largest misfit that is left then.</param>
public sealed record ReadOtherwise(bool IsBetweenBark, Length Worst)
{
    /// <summary>With fewer readings to spare, distances may meet by chance (our own choice).</summary>
    private const int FewestSpare = 2;

    /// <summary>Looks whether that explains what a survey found.</summary>
    /// <param name="state">The planting.</param>
    /// <param name="survey">Its survey.</param>
    /// <param name="isTurnedOver">As in <see cref="TapeSurvey.Search"/>.</param>
    /// <param name="cancellation">Ends the work.</param>
    /// <returns>That it does; null where all readings fit as they are written, where some are written one way and some the other, and where it does not.</returns>
    /// <exception cref="OperationCanceledException">The work was ended.</exception>
    internal static ReadOtherwise? Of(PlantingState state, TapeSurvey survey, bool isTurnedOver, CancellationToken cancellation)
    {
        SurveyedReading[] used = [.. survey.Readings.Where(judged => judged.Kind != SurveyedReadingKind.Unusable)];
        if (IsWhole(survey) || survey.IsTooLarge || used.Length == 0 || used.Any(judged => judged.Reading.IsBetweenBark != used[0].Reading.IsBetweenBark))
        {
            return null;
        }

        var isBetweenBark = !used[0].Reading.IsBetweenBark;
        var planting = state.Planting with { Tapes = [.. state.Planting.Tapes.Select(tape => tape with { IsBetweenBark = isBetweenBark })] };
        var other = new Surveyor(state with { Planting = planting }, isTurnedOver, cancellation).Survey();
        Length[] misfits = [.. other.Readings.Select(judged => judged.Misfit).OfType<Length>()];
        var isChecked = other.SpareReadings + BetweenKnown(other) >= FewestSpare;
        return IsWhole(other) && isChecked && misfits.Length == used.Length
            ? new(isBetweenBark, misfits.Max(misfit => misfit.Magnitude))
            : null;
    }

    private static bool IsWhole(TapeSurvey survey) =>
        !survey.IsUnsettled && survey.Misplaced.IsEmpty && survey.Readings.All(judged => judged.Kind is SurveyedReadingKind.Fits or SurveyedReadingKind.Unusable);

    private static int BetweenKnown(TapeSurvey survey)
    {
        var known = survey.Trunks.Where(trunk => trunk.Kind == SurveyedPlaceKind.Known).Select(trunk => trunk.Name).ToHashSet(StringComparer.Ordinal);
        return survey.Readings.Count(judged => judged.Kind == SurveyedReadingKind.Fits && known.Contains(judged.Reading.From) && known.Contains(judged.Reading.To));
    }
}
