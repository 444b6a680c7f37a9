using System.Collections.Immutable;
using GroveSpec.Craft.Composition;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.States;

namespace GroveSpec.Checks.Ground;

/// <summary>A planting and a newcomer: what stands without it, and what would stand with it at a place.</summary>
internal sealed class GroundCase
{
    private readonly CheckContext context;
    private readonly int replaced;
    private readonly Lazy<ImmutableArray<Finding>> found;

    /// <summary>Puts a newcomer to a planting.</summary>
    /// <param name="context">The planting.</param>
    /// <param name="newcomer">The newcomer, with any place; one of the planting's own trunks is taken out of it first.</param>
    public GroundCase(CheckContext context, TrunkState newcomer)
    {
        this.context = context;
        Newcomer = newcomer with { Presence = Presence.Standing };
        replaced = context.State.Trunks.ToList().FindIndex(trunk => trunk.Name == newcomer.Name);
        Without = new CheckContext(context.Planting, context.State with { Trunks = replaced < 0 ? context.State.Trunks : context.State.Trunks.RemoveAt(replaced) }, context.Origins, context.Units) { MakesAll = true };
        Others = Without.Standing;
        Slot = Others.Trunks.Count(trunk => string.CompareOrdinal(trunk.Name, newcomer.Name) < 0);
        Trunks = Others.Trunks.Insert(Slot, Newcomer);
        found = new(() => [.. Checker.Composition(Without, CancellationToken.None)]);
    }

    /// <summary>The newcomer, standing.</summary>
    public TrunkState Newcomer { get; }

    /// <summary>The planting without it.</summary>
    public CheckContext Without { get; }

    /// <summary>What is found without it.</summary>
    public ImmutableArray<Finding> Found => found.Value;

    /// <summary>The others that stand and have a place.</summary>
    public StandingTrunks Others { get; }

    /// <summary>The newcomer's place among all by name.</summary>
    public int Slot { get; }

    /// <summary>All that stand and have a place, by name, the newcomer among them.</summary>
    public ImmutableArray<TrunkState> Trunks { get; }

    /// <summary>The newcomer as a set.</summary>
    public ulong Own => 1UL << Slot;

    /// <summary>The planting with the newcomer at a place.</summary>
    /// <param name="place">The place.</param>
    /// <returns>The planting, to be looked at afresh.</returns>
    public CheckContext At(PlanPoint place)
    {
        var set = Newcomer with { Place = place };
        var trunks = replaced < 0 ? context.State.Trunks.Add(set) : context.State.Trunks.SetItem(replaced, set);
        return new CheckContext(context.Planting, context.State with { Trunks = trunks }, context.Origins, context.Units) { MakesAll = true };
    }

    /// <summary>Trunks as a set.</summary>
    /// <param name="names">Their names.</param>
    /// <returns>The set; null where one of them does not stand or has no place.</returns>
    public ulong? SetOf(IEnumerable<string> names)
    {
        var set = 0UL;
        foreach (var name in names)
        {
            var index = Trunks.ToList().FindIndex(trunk => trunk.Name == name);
            if (index < 0)
            {
                return null;
            }

            set |= 1UL << index;
        }

        return set;
    }

    /// <summary>The names of a set of trunks.</summary>
    /// <param name="set">The set.</param>
    /// <returns>The names in their order.</returns>
    public ImmutableArray<string> NamesOf(ulong set) => [.. Trunks.Where((_, index) => (set >> index & 1) != 0).Select(trunk => trunk.Name)];

    /// <summary>Whether a finding is the same wherever the newcomer stands, so that it takes no ground.</summary>
    /// <param name="check">The check.</param>
    /// <param name="trunks">Its trunks as a set.</param>
    /// <returns>True for the number of trunks, for the order of sizes, and for the place of a largest trunk that stands already.</returns>
    public bool IsOfAnyPlace(CheckDescription check, ulong trunks) => check.Name switch
    {
        "even-count" or "wide-but-short" or "thin-but-tall" => true,
        "centred-main" => (trunks & Own) == 0,
        _ => false,
    };
}
