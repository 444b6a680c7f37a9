using System.Collections.Immutable;
using GroveSpec.Model.Quantities;

namespace GroveSpec.Checks.Nudging;

/// <summary>How far trunks may be nudged.</summary>
/// <param name="Reach">How far the foot of a trunk may be moved, above zero: as far as its roots allow.</param>
/// <param name="Bend">By how much a trunk with a fixed foot may be bent, as its tip is seen from its foot; above zero.</param>
/// <param name="Step">The step to which places are told, above zero.</param>
public sealed record NudgeWish(Length Reach, Angle Bend, Length Step)
{
    /// <summary>The steepest bend that may be asked for, in degrees: what is bent farther is no small move any more; our own choice.</summary>
    public const double SteepestBend = 60;

    /// <summary>The trunks that stay, since their statements could not be read whole: what they say of the trunk is not known.</summary>
    internal ImmutableHashSet<string> Torn { get; init; } = [];

    /// <summary>The usual wish: 60 mm and 15 degrees, our own choice, for the wood and the roots may allow less; to a tenth of a millimetre, or to a two-hundredth of an inch.</summary>
    /// <param name="units">The units that the grower works in.</param>
    /// <returns>The wish.</returns>
    public static NudgeWish Usual(UnitSystem units) => new(
        Length.FromMillimetres(60), new Angle(15), units == UnitSystem.Inch ? new Length(127_000) : new Length(Length.NanometresPerMillimetre / 10));
}
