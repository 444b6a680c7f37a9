using System.Numerics;
using GroveSpec.Craft.Composition;
using GroveSpec.Model;
using GroveSpec.Model.Roles;
using GroveSpec.Model.States;

namespace GroveSpec.Craft.Choice;

/// <summary>What the roles of a planting lose if only some of a stool stood.</summary>
/// <remarks>
/// The weights are our own choice. A role that nobody plays any more is 1 lost, that of the lowest rank 2; where no role has a
/// rank the thickest trunk is taken for the main one, and to lose it is 2. A role of which one less near its aims is left loses
/// the difference, each aim counting by the share that is missing of it, in the mean of its aims. A trunk past its role's
/// ceiling is half a point, and a trunk that is thinner than one of a later rank a quarter for each such.
/// </remarks>
public sealed class RoleAims
{
    private const double RoleLost = 1;
    private const double MainLost = 2;
    private const double PastCeiling = 0.5;
    private const double OutOfRank = 0.25;

    private readonly List<(uint Players, double[] Missing, double LeastElsewhere, double Least, double Lost)> roles = [];
    private readonly uint[] outranked;
    private readonly uint outranking;
    private readonly uint pastCeiling;

    /// <summary>Reads the roles of a planting.</summary>
    /// <param name="planting">The planting.</param>
    /// <param name="trunks">The trunks to choose from, at most <see cref="NeighbourTable.MostTrunks"/>.</param>
    /// <param name="others">Trunks that stand in any case.</param>
    public RoleAims(Planting planting, StandingTrunks trunks, IReadOnlyCollection<TrunkState> others)
    {
        ArgumentNullException.ThrowIfNull(planting);
        ArgumentNullException.ThrowIfNull(trunks);
        ArgumentNullException.ThrowIfNull(others);
        outranked = new uint[trunks.Count];
        Role?[] played = [.. trunks.Trunks.Select(trunk => planting.RoleOf(trunk.Trunk))];
        var ranks = played.Concat(others.Select(other => planting.RoleOf(other.Trunk))).Where(role => role?.Rank is not null).Select(role => role!.Rank!.Value.Value).ToArray();
        foreach (var role in played.OfType<Role>().Distinct())
        {
            var players = trunks.Trunks.Select((_, index) => played[index] == role ? 1u << index : 0).Aggregate(0u, (set, bit) => set | bit);
            double[] missing = [.. trunks.Trunks.Select(trunk => Missing(role, trunk))];
            var elsewhere = others.Where(other => planting.RoleOf(other.Trunk) == role).Select(other => Missing(role, other)).DefaultIfEmpty(double.PositiveInfinity).Min();
            var least = Math.Min(elsewhere, Enumerable.Range(0, trunks.Count).Where(index => played[index] == role).Min(index => missing[index]));
            var isMain = role.Rank is { } rank && rank.Value == ranks.Min();
            roles.Add((players, missing, elsewhere, least, isMain ? MainLost : RoleLost));
            Main |= isMain ? players : 0;
        }

        if (ranks.Length == 0 && trunks.Trunks.Concat(others).Max(trunk => trunk.Diameter?.Value) is { } most && others.All(other => other.Diameter?.Value != most))
        {
            // Of several that are as thick any is the main one.
            Main = trunks.Trunks.Select((trunk, place) => trunk.Diameter?.Value == most ? 1u << place : 0).Aggregate(0u, (set, bit) => set | bit);
            roles.Add((Main, new double[trunks.Count], double.PositiveInfinity, 0, MainLost));
        }

        for (var one = 0; one < trunks.Count; one++)
        {
            pastCeiling |= played[one]?.Ceilings.Any(ceiling => Size(trunks.Trunks[one], ceiling.Dimension) is { } size && size >= ceiling.Limit.Millimetres) == true ? 1u << one : 0;
            for (var other = 0; other < trunks.Count; other++)
            {
                outranked[one] |= played[one]?.Rank is { } first && played[other]?.Rank is { } second && first.Value < second.Value
                    && Size(trunks.Trunks[one], Dimension.Diameter) < Size(trunks.Trunks[other], Dimension.Diameter) ? 1u << other : 0;
            }

            outranking |= outranked[one] != 0 ? 1u << one : 0;
        }
    }

    /// <summary>The trunks any of which is the main one.</summary>
    public uint Main { get; }

    /// <summary>What is lost.</summary>
    /// <param name="kept">The trunks that stand.</param>
    /// <returns>The sum, 0 where every role is played as well as it can be.</returns>
    public double Loss(uint kept) => LeastLoss(kept, kept);

    /// <summary>What is lost at least.</summary>
    /// <param name="kept">The trunks that stand.</param>
    /// <param name="possible">Those and all that may stand besides.</param>
    /// <returns>The bound; with both the same, what is lost.</returns>
    public double LeastLoss(uint kept, uint possible)
    {
        var lost = PastCeiling * BitOperations.PopCount(pastCeiling & kept);
        foreach (var role in roles)
        {
            var least = role.LeastElsewhere;
            for (var rest = role.Players & possible; rest != 0; rest &= rest - 1)
            {
                least = Math.Min(least, role.Missing[BitOperations.TrailingZeroCount(rest)]);
            }

            lost += double.IsPositiveInfinity(least) ? role.Lost : least - role.Least;
        }

        for (var rest = kept & outranking; rest != 0; rest &= rest - 1)
        {
            lost += OutOfRank * BitOperations.PopCount(outranked[BitOperations.TrailingZeroCount(rest)] & kept);
        }

        return lost;
    }

    private static double Missing(Role role, TrunkState trunk) =>
        role.Aims.Select(aim => Size(trunk, aim.Dimension) is { } size ? Math.Max(0, 1 - (size / aim.Target.Millimetres)) : (double?)null).OfType<double>().DefaultIfEmpty(0).Average();

    private static double? Size(TrunkState trunk, Dimension dimension) =>
        (dimension == Dimension.Diameter ? trunk.Diameter : trunk.Height)?.Value.Millimetres;
}
