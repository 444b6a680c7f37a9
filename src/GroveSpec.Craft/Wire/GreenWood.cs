using GroveSpec.Craft.Care;
using GroveSpec.Model.Quantities;

namespace GroveSpec.Craft.Wire;

/// <summary>
/// Green wood as a laboratory bends it. Young living stems are softer and creep, by amounts that are not measured, so these figures
/// compare and decide nothing.
/// </summary>
/// <param name="Wood">The wood that was tested.</param>
/// <param name="Softest">A modulus of elasticity at the lower end.</param>
/// <param name="Usual">The mean of the tests.</param>
/// <param name="Stiffest">One at the upper end.</param>
/// <param name="BreakingStrain">The nominal strain of the outer fibres at which it broke: modulus of rupture over modulus of elasticity.</param>
/// <param name="IsOfGenus">Whether the wood is of the tree's own genus; otherwise it stands for any.</param>
public sealed record GreenWood(string Wood, Stress Softest, Stress Usual, Stress Stiffest, Proportion BreakingStrain, bool IsOfGenus)
{
    // One standard deviation of the modulus of elasticity, FPL-GTR-190, table 5-6.
    private const double Spread = 0.22;

    // Record 1914: 643,000 to 1,769,000 psi green. The usual value and the breaking strain are the middle of the woods below.
    private static readonly GreenWood Any = new("green wood of many kinds", Stress.FromGigapascals(4.4), new Stress(7_700), Stress.FromGigapascals(12.2), new Proportion(0.006), IsOfGenus: false);

    /// <summary>The wood nearest to a species. Source of the rows: FPL-GTR-190 (Wood Handbook), table 5-3a, green; red pine as read there, the others from memory.</summary>
    /// <param name="kind">The species.</param>
    /// <returns>A wood of the same genus, with one standard deviation to each side, or what many kinds span.</returns>
    public static GreenWood Of(TreeKind kind)
    {
        var name = kind.Profile?.Botanical?.Value ?? kind.Species ?? "";
        var end = name.AsSpan().IndexOfAny(' ', '-');
        return (end < 0 ? name : name[..end]).ToUpperInvariant() switch
        {
            "ULMUS" => OfTests("American elm", 50, 7_700),
            "ACER" => OfTests("red maple", 53, 9_600),
            "FAGUS" => OfTests("American beech", 59, 9_500),
            "LARIX" => OfTests("tamarack", 50, 8_500),
            "JUNIPERUS" => OfTests("eastern redcedar", 48, 4_500),
            "PINUS" => OfTests("red pine", 40, 8_800),
            _ => Any,
        };
    }

    private static GreenWood OfTests(string wood, double rupture, double elasticity) =>
        new($"green wood of {wood}", new Stress(elasticity * (1 - Spread)), new Stress(elasticity), new Stress(elasticity * (1 + Spread)), new Proportion(rupture / elasticity), IsOfGenus: true);
}
