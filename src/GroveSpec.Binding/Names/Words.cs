using GroveSpec.Model.Roles;
using GroveSpec.Model.Species;
using GroveSpec.Model.Tasks;
using GroveSpec.Model.Times;
using GroveSpec.Model.Views;
using GroveSpec.Syntax.Parsing;

namespace GroveSpec.Binding.Names;

/// <summary>The words among which a file chooses, each list in the order of the enumeration it stands for.</summary>
public static class Words
{
    /// <summary>For <see cref="Model.Habit"/>.</summary>
    public static readonly IReadOnlyList<string> Habits = ["group", "clump", "raft"];

    /// <summary>For the cases of <see cref="Model.Containers.Container"/>.</summary>
    public static readonly IReadOnlyList<string> Shapes = ["oval", "rectangle", "round", "slab"];

    /// <summary>For <see cref="DepthOrder"/>.</summary>
    public static readonly IReadOnlyList<string> Depths = ["near", "far"];

    /// <summary>For <see cref="Form"/>.</summary>
    public static readonly IReadOnlyList<string> Forms = KnownWords.Forms;

    /// <summary>For <see cref="Vigour"/>.</summary>
    public static readonly IReadOnlyList<string> Vigours = KnownWords.Vigours;

    /// <summary>For <see cref="Dimension"/>.</summary>
    public static readonly IReadOnlyList<string> Dimensions = ["diameter", "height"];

    /// <summary>For <see cref="TaskKind"/>.</summary>
    public static readonly IReadOnlyList<string> TaskKinds = KnownWords.TaskKinds;

    /// <summary>For <see cref="WireMetal"/>.</summary>
    public static readonly IReadOnlyList<string> Metals = KnownWords.Metals;

    /// <summary>For <see cref="TrunkPosition"/>.</summary>
    public static readonly IReadOnlyList<string> Positions = ["low", "middle", "high"];

    /// <summary>For the four sides, by quarter turns of the bearing.</summary>
    public static readonly IReadOnlyList<string> Sides = ["back", "right", "front", "left"];

    /// <summary>For <see cref="Season"/>.</summary>
    public static readonly IReadOnlyList<string> Seasons = KnownWords.Seasons;

    /// <summary>For <see cref="SeasonPart"/> without the whole.</summary>
    public static readonly IReadOnlyList<string> SeasonParts = KnownWords.SeasonParts;

    /// <summary>For <see cref="Stage"/>.</summary>
    public static readonly IReadOnlyList<string> Stages = KnownWords.Stages;

    /// <summary>For <see cref="LeafHabit"/>.</summary>
    public static readonly IReadOnlyList<string> LeafHabits = KnownWords.LeafHabits;

    /// <summary>For <see cref="GrowthPace"/>.</summary>
    public static readonly IReadOnlyList<string> Paces = KnownWords.Paces;

    /// <summary>For <see cref="Flush"/>.</summary>
    public static readonly IReadOnlyList<string> Flushes = KnownWords.Flushes;

    /// <summary>The months, January first.</summary>
    public static readonly IReadOnlyList<string> Months =
    [
        "January", "February", "March", "April", "May", "June", "July", "August", "September", "October", "November", "December",
    ];

    /// <summary>The place of a word in a list.</summary>
    /// <param name="list">The list.</param>
    /// <param name="word">The word, in small letters.</param>
    /// <returns>Its place from 0, negative where it is not in the list.</returns>
    public static int IndexOf(IReadOnlyList<string> list, string word)
    {
        ArgumentNullException.ThrowIfNull(list);
        for (var index = 0; index < list.Count; index++)
        {
            if (list[index] == word)
            {
                return index;
            }
        }

        return -1;
    }
}
