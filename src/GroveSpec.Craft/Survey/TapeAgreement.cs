using System.Collections.Immutable;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.States;

namespace GroveSpec.Craft.Survey;

/// <summary>How tape readings agree with each other and with the places that the file names, as <see cref="TapeSurvey"/> finds it, without the places.</summary>
public sealed class TapeAgreement
{
    private readonly (string Name, PlanPoint? At)[] places;
    private readonly (NetworkReading Reading, Length Distance)[] read;
    private HashSet<int>? distrusted;

    /// <summary>Makes one.</summary>
    /// <param name="places">The trunks and the places that the file names.</param>
    /// <param name="read">What was read among them.</param>
    internal TapeAgreement((string Name, PlanPoint? At)[] places, (NetworkReading Reading, Length Distance)[] read) => (this.places, this.read) = (places, read);

    /// <summary>All readings between two trunks whose places the file names, in its order, with what these make them, however little that is off.</summary>
    public required ImmutableArray<FittedReading> BetweenPlaces { get; init; }

    /// <summary>The readings that are off, in the order of the file, with what the others make them.</summary>
    public required ImmutableArray<FittedReading> LeftOut { get; init; }

    /// <summary>Readings of which some are off, where the others do not tell which: one for each network.</summary>
    public required ImmutableArray<DoubtfulReadings> InDoubt { get; init; }

    /// <summary>The trunks whose place in the file does not fit the readings, or may not.</summary>
    public required ImmutableArray<MisplacedPlace> Misplaced { get; init; }

    /// <summary>The readings of each network that do not agree as a tape reads where it cannot be told which are off, by their numbers from 0.</summary>
    public required ImmutableArray<ImmutableArray<int>> Unsettled { get; init; }

    /// <summary>The readings that no trunk should be placed by, by their numbers from 0: those that are off, and those to a trunk whose own place is surely wrong.</summary>
    public IReadOnlySet<int> Distrusted => distrusted ??= LeftOut.Select(one => one.Reading)
        .Concat(Misplaced.Where(place => place.IsSure).SelectMany(place => read.Select(one => one.Reading).Where(one => places[one.From].Name == place.Trunk || places[one.To].Name == place.Trunk).Select(one => one.Source)))
        .ToHashSet();

    /// <summary>Looks how readings agree. Of more than <see cref="TapeSurvey.MostTrunks"/> trunks without a place that hang together nothing is told.</summary>
    /// <param name="state">The planting on a day, whose thicknesses are those of the day; only places that the file states count as known.</param>
    /// <param name="before">How they agreed before an edit; null where that is not known.</param>
    /// <param name="cancellation">Ends the work.</param>
    /// <returns>How they agree; <paramref name="before"/> itself where the same was read among the same places.</returns>
    /// <exception cref="OperationCanceledException">The work was ended.</exception>
    public static TapeAgreement Of(PlantingState state, TapeAgreement? before = null, CancellationToken cancellation = default) =>
        new Surveyor(state, isTurnedOver: false, cancellation).Agreement(before);

    /// <summary>Whether it is that of some readings.</summary>
    /// <param name="trunks">The trunks and the places that the file names.</param>
    /// <param name="readings">What was read among them.</param>
    /// <returns>True when nothing differs.</returns>
    internal bool IsOf((string Name, PlanPoint? At)[] trunks, (NetworkReading Reading, Length Distance)[] readings) => places.AsSpan().SequenceEqual(trunks) && read.AsSpan().SequenceEqual(readings);
}
