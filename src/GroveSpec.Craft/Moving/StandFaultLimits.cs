namespace GroveSpec.Craft.Moving;

/// <summary>From where on something is amiss, what it weighs, and what is let stand.</summary>
public sealed class StandFaultLimits
{
    private const int Kinds = 12;

    private readonly double[] limits = new double[Kinds];
    private readonly double[] weights = new double[Kinds];
    private readonly HashSet<(StandFaultKind Kind, ulong Trunks)> accepted = [];

    /// <summary>The limit of a kind: as the check of that name has it; not a number where nobody asks for it, so that nothing is within it.</summary>
    /// <param name="kind">The kind.</param>
    /// <returns>The limit in the unit of the check: percent, millimetres or a bare ratio; for touching the share of both radii that is kept free beside them; 0 for another kind that has none and is asked for.</returns>
    public double this[StandFaultKind kind] => limits[(int)kind];

    /// <summary>Whether anybody asks for a kind.</summary>
    /// <param name="kind">The kind.</param>
    /// <returns>True when somebody does.</returns>
    public bool IsOn(StandFaultKind kind) => !double.IsNaN(limits[(int)kind]);

    /// <summary>Sets what holds for a kind.</summary>
    /// <param name="kind">The kind.</param>
    /// <param name="limit">Its limit; null where nobody asks for it.</param>
    /// <param name="weight">What one of it weighs, above zero.</param>
    public void Set(StandFaultKind kind, double? limit, double weight)
    {
        limits[(int)kind] = limit ?? double.NaN;
        weights[(int)kind] = weight;
    }

    /// <summary>Lets one stand.</summary>
    /// <param name="kind">The kind.</param>
    /// <param name="trunks">The trunks it is about.</param>
    public void Accept(StandFaultKind kind, ulong trunks) => accepted.Add((kind, trunks));

    /// <summary>What one weighs.</summary>
    /// <param name="kind">The kind.</param>
    /// <param name="trunks">The trunks it is about.</param>
    /// <returns>Its weight; 0 where it is let stand.</returns>
    public double WeightOf(StandFaultKind kind, ulong trunks) => accepted.Count > 0 && accepted.Contains((kind, trunks)) ? 0 : weights[(int)kind];
}
