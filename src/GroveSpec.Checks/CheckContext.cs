using System.Collections.Immutable;
using GroveSpec.Checks.Judging;
using GroveSpec.Craft.Calendar;
using GroveSpec.Craft.Care;
using GroveSpec.Craft.Composition;
using GroveSpec.Craft.Containers;
using GroveSpec.Craft.Survey;
using GroveSpec.Craft.Views;
using GroveSpec.Craft.Wire;
using GroveSpec.Model;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.States;

namespace GroveSpec.Checks;

/// <summary>What a rule is given.</summary>
/// <param name="Planting">The planting as written.</param>
/// <param name="State">Its state on the day that is judged, with the places that tape readings give.</param>
/// <param name="Origins">Where facts were written.</param>
/// <param name="Units">The units in which messages speak.</param>
public sealed record CheckContext(Planting Planting, PlantingState State, IOriginTable Origins, UnitSystem Units)
{
    private PlantingState? byName;
    private StandingTrunks? standing;
    private ContainerOutline? outline;
    private FrontView? view;
    private TaskReckoning? reckoning;
    private ImmutableArray<Work>? work;
    private ImmutableArray<WirePlan>? wires;

    /// <summary>Looks how the tape readings agree; null where they are not to be looked at, as where only the composition is asked for, again and again.</summary>
    public Func<TapeAgreement>? Tapes { get; init; }

    /// <summary>Tape readings, by their numbers from 0, that place no trunk that the others place: those of <see cref="TapeAgreement.Distrusted"/>.</summary>
    public IReadOnlySet<int> Distrusted { get; init; } = ImmutableHashSet<int>.Empty;

    /// <summary>What checks have told already, for those that might tell it again.</summary>
    internal OneFactOnce Facts { get; } = new();

    /// <summary>Whether a finding is made of all that is found, and not of the worst of very many alone.</summary>
    internal bool MakesAll { get; init; }

    /// <summary>The trunks that stand and have a place, by name, with their neighbours; worked out once for all rules.</summary>
    internal StandingTrunks Standing => standing ??= StandingTrunks.Of(ByName);

    /// <summary>The container's rim; null when the file gives no container.</summary>
    internal ContainerOutline? Outline => Planting.Container is null ? null : outline ??= ContainerOutline.Of(Planting.Container);

    /// <summary>What the viewer sees; of equals the first by name comes first.</summary>
    internal FrontView View => view ??= FrontView.Of(ByName);

    /// <summary>When the tasks are due, and what cannot hold of it; worked out once for all rules.</summary>
    internal TaskReckoning Reckoning => reckoning ??= TaskDates.Reckon(Planting);

    /// <summary>The tasks with the trunks and species they are done to.</summary>
    internal ImmutableArray<Work> Work => work ??= WorkList.Of(Planting, Reckoning.Tasks);

    /// <summary>Every wire on every trunk; worked out once for all rules.</summary>
    internal ImmutableArray<WirePlan> Wires => wires ??= WirePlans.Of(State, Work);

    private PlantingState ByName => byName ??= NameOrder.Of(State);
}
