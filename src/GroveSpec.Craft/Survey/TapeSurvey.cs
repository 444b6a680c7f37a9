using System.Collections.Immutable;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.States;

namespace GroveSpec.Craft.Survey;

/// <summary>
/// Where trunks stand by all tape readings together, how sure that is, which readings do not fit, and what is still free.
/// Places that the file names are taken as exact; all others are the least-squares fit of the readings. A reading between
/// bark is made one between centres by both radii. A reading that is found to be off takes no part.
/// </summary>
/// <remarks>
/// It differs from <see cref="TapePlacement"/>, which places one trunk after the other while a text is typed: here all places
/// are sought at once, also where no trunk has three readings to known ones, and every reading is judged.
/// </remarks>
public sealed record TapeSurvey
{
    /// <summary>Up to so many trunks that hang together are sought at once, beside those whose place is known; the work grows with the cube.</summary>
    public const int MostTrunks = 60;

    /// <summary>Every trunk in the order of the file; of two of one name the first.</summary>
    public required ImmutableArray<SurveyedTrunk> Trunks { get; init; }

    /// <summary>Every reading in the order of the file.</summary>
    public required ImmutableArray<SurveyedReading> Readings { get; init; }

    /// <summary>What the readings leave free, the widest first.</summary>
    public required ImmutableArray<SurveyFreedom> Freedoms { get; init; }

    /// <summary>The reading to take next; null where none would tell much.</summary>
    public required NextReading? Next { get; init; }

    /// <summary>The standard deviation of a reading, of the largest network.</summary>
    public required Length ReadingDeviation { get; init; }

    /// <summary>Whether the deviation is assumed, because fewer than three readings are spare.</summary>
    public required bool IsDeviationAssumed { get; init; }

    /// <summary>Readings beyond those that places need, in the largest network.</summary>
    public required int SpareReadings { get; init; }

    /// <summary>Whether readings do not agree as a tape reads and it cannot be told which are off, so that no place that hangs on them is to be trusted and no reading to be blamed.</summary>
    public required bool IsUnsettled { get; init; }

    /// <summary>What the misfits of such readings come to on the whole, shared out over those to spare; null where all is settled.</summary>
    public required Length? Disagreement { get; init; }

    /// <summary>What a tape read by hand is right to over the distances of such readings, common practice; null where all is settled.</summary>
    public required Length? TapeIsRightTo { get; init; }

    /// <summary>How many of all readings that may be off are; null where that is not told, and zero where none may be.</summary>
    public required int? OffAmong { get; init; }

    /// <summary>The trunks whose place in the file does not fit the readings, or may not.</summary>
    public required ImmutableArray<MisplacedPlace> Misplaced { get; init; }

    /// <summary>Whether trunks were left free because more than <see cref="MostTrunks"/> hang together.</summary>
    public required bool IsTooLarge { get; init; }

    /// <summary>That all readings would fit, had they been read the other way; no place may be written then until that is sure. Null where they fit as they are written, or not even so.</summary>
    public ReadOtherwise? FitsOtherwise { get; init; }

    /// <summary>Surveys a planting.</summary>
    /// <param name="state">The planting on a day, whose thicknesses are those of the day; only places that the file states count as known.</param>
    /// <param name="isTurnedOver">Whether axes that are chosen because too few places are known are chosen the other way round.</param>
    /// <returns>The survey; the same for the same readings.</returns>
    public static TapeSurvey Of(PlantingState state, bool isTurnedOver = false) => Search(state, isTurnedOver, CancellationToken.None);

    /// <summary>Surveys a planting for somebody who may not wait for it.</summary>
    /// <param name="state">As in <see cref="Of"/>.</param>
    /// <param name="isTurnedOver">As in <see cref="Of"/>.</param>
    /// <param name="cancellation">Ends the work.</param>
    /// <returns>The survey; the same for the same readings.</returns>
    /// <exception cref="OperationCanceledException">The work was ended.</exception>
    public static TapeSurvey Search(PlantingState state, bool isTurnedOver, CancellationToken cancellation)
    {
        var survey = new Surveyor(state, isTurnedOver, cancellation).Survey();
        return ReadOtherwise.Of(state, survey, isTurnedOver, cancellation) is { } otherwise
            ? survey with { FitsOtherwise = otherwise, Trunks = [.. survey.Trunks.Select(trunk => trunk with { CanBeWritten = false })] }
            : survey;
    }

    /// <summary>Surveys trunks that hang together and are tied to no known place, for themselves.</summary>
    /// <param name="state">The planting, as it was surveyed.</param>
    /// <param name="apart">What was found to be free of it, of the kind <see cref="SurveyFreedomKind.Apart"/>.</param>
    /// <returns>The survey of those trunks alone, in axes of their own.</returns>
    public static TapeSurvey OfApart(PlantingState state, SurveyFreedom apart)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(apart);
        var names = apart.Trunks.ToHashSet(StringComparer.Ordinal);
        var planting = state.Planting with
        {
            Trunks = [.. state.Planting.Trunks.Where(trunk => names.Contains(trunk.Name))],
            Tapes = [.. state.Planting.Tapes.Where(tape => names.Contains(tape.From) && names.Contains(tape.To))],
        };
        return Of(state with { Planting = planting, Trunks = [.. state.Trunks.Where(trunk => names.Contains(trunk.Name))] });
    }
}
