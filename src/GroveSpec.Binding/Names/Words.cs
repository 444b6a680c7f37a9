using GroveSpec.Model.Roles;
using GroveSpec.Model.Species;
using GroveSpec.Model.Tasks;
using GroveSpec.Model.Times;
using GroveSpec.Model.Views;

namespace GroveSpec.Binding.Names;

/// <summary>The words among which a file chooses, each list in the order of the enumeration it stands for.</summary>
internal static class Words
{
    /// <summary>For <see cref="Model.Habit"/>.</summary>
    public static readonly string[] Habits = ["group", "clump", "raft"];

    /// <summary>For the cases of <see cref="Model.Containers.Container"/>.</summary>
    public static readonly string[] Shapes = ["oval", "rectangle", "round", "slab"];

    /// <summary>For <see cref="DepthOrder"/>.</summary>
    public static readonly string[] Depths = ["near", "far"];

    /// <summary>For <see cref="Form"/>.</summary>
    public static readonly string[] Forms = ["balanced", "stout", "slender"];

    /// <summary>For <see cref="Vigour"/>.</summary>
    public static readonly string[] Vigours = ["push", "steady", "restrain"];

    /// <summary>For <see cref="Dimension"/>.</summary>
    public static readonly string[] Dimensions = ["diameter", "height"];

    /// <summary>For <see cref="TaskKind"/>.</summary>
    public static readonly string[] TaskKinds =
    [
        "wire", "unwire", "look-over", "prune", "pinch", "disbud", "defoliate", "sacrifice", "remove-sacrifice", "repot",
        "root-prune", "feed", "shelter", "graft", "seal", "measure", "photograph", "other",
    ];

    /// <summary>For <see cref="WireMetal"/>.</summary>
    public static readonly string[] Metals = ["aluminium", "copper"];

    /// <summary>For <see cref="TrunkPosition"/>.</summary>
    public static readonly string[] Positions = ["low", "middle", "high"];

    /// <summary>For the four sides, by quarter turns of the bearing.</summary>
    public static readonly string[] Sides = ["back", "right", "front", "left"];

    /// <summary>For <see cref="Season"/>.</summary>
    public static readonly string[] Seasons = ["spring", "summer", "autumn", "winter"];

    /// <summary>For <see cref="SeasonPart"/> without the whole.</summary>
    public static readonly string[] SeasonParts = ["early", "mid", "late"];

    /// <summary>For <see cref="Stage"/>.</summary>
    public static readonly string[] Stages = ["bud-break", "leaf-out", "harden-off", "midsummer", "leaf-colour", "leaf-fall", "dormant"];

    /// <summary>For <see cref="LeafHabit"/>.</summary>
    public static readonly string[] LeafHabits = ["deciduous", "deciduous-conifer", "semi-evergreen", "evergreen", "conifer", "tropical"];

    /// <summary>For <see cref="GrowthPace"/>.</summary>
    public static readonly string[] Paces = ["slow", "medium", "fast"];

    /// <summary>For <see cref="Flush"/>.</summary>
    public static readonly string[] Flushes = ["single", "partial", "repeated", "continuous"];

    /// <summary>The months, January first.</summary>
    public static readonly string[] Months =
    [
        "January", "February", "March", "April", "May", "June", "July", "August", "September", "October", "November", "December",
    ];

    /// <summary>The place of a word in a list.</summary>
    /// <param name="list">The list.</param>
    /// <param name="word">The word, in small letters.</param>
    /// <returns>Its place from 0, negative where it is not in the list.</returns>
    public static int IndexOf(string[] list, string word) => Array.IndexOf(list, word);
}
