namespace GroveSpec.Syntax.Parsing;

/// <summary>The words among which a grower chooses where the language leaves a choice.</summary>
public static class KnownWords
{
    /// <summary>How the trunks belong together.</summary>
    public static IReadOnlyList<string> Habits => ["clump", "group", "raft"];

    /// <summary>The shapes of containers.</summary>
    public static IReadOnlyList<string> ContainerShapes => ["oval", "rectangle", "round", "slab"];

    /// <summary>North and south.</summary>
    public static IReadOnlyList<string> Hemispheres => ["N", "S"];

    /// <summary>The figures a role may mean.</summary>
    public static IReadOnlyList<string> Forms => ["balanced", "stout", "slender"];

    /// <summary>How strongly a role may grow.</summary>
    public static IReadOnlyList<string> Vigours => ["push", "steady", "restrain"];

    /// <summary>The kinds of work.</summary>
    public static IReadOnlyList<string> TaskKinds =>
    [
        "wire", "unwire", "look-over", "prune", "pinch", "disbud", "defoliate", "sacrifice", "remove-sacrifice", "repot",
        "root-prune", "feed", "shelter", "graft", "seal", "measure", "photograph", "other",
    ];

    /// <summary>The seasons.</summary>
    public static IReadOnlyList<string> Seasons => ["spring", "summer", "autumn", "winter"];

    /// <summary>The parts of a season.</summary>
    public static IReadOnlyList<string> SeasonParts => ["early", "mid", "late"];

    /// <summary>The stages of a tree's year, in its order from spring on.</summary>
    public static IReadOnlyList<string> Stages => ["bud-break", "leaf-out", "harden-off", "midsummer", "leaf-colour", "leaf-fall", "dormant"];

    /// <summary>The metals of wire.</summary>
    public static IReadOnlyList<string> Metals => ["aluminium", "copper"];

    /// <summary>The sides of a planting.</summary>
    public static IReadOnlyList<string> Sides => ["back", "front", "left", "right"];

    /// <summary>When a species carries leaves.</summary>
    public static IReadOnlyList<string> LeafHabits => ["deciduous", "deciduous-conifer", "semi-evergreen", "evergreen", "conifer", "tropical"];

    /// <summary>How fast a species grows.</summary>
    public static IReadOnlyList<string> Paces => ["slow", "medium", "fast"];

    /// <summary>How often a species flushes.</summary>
    public static IReadOnlyList<string> Flushes => ["single", "partial", "repeated", "continuous"];

    /// <summary>The days of the sun that stages can be counted from.</summary>
    public static IReadOnlyList<string> Anchors => ["solstice"];

    /// <summary>The months in full and cut short, as words.</summary>
    public static IReadOnlyList<string> Months =>
    [
        "January", "February", "March", "April", "May", "June", "July", "August", "September", "October", "November", "December",
        "Jan", "Feb", "Mar", "Apr", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec",
    ];

    /// <summary>Whether a list holds a word, as written.</summary>
    internal static bool Has(IReadOnlyList<string> known, string word)
    {
        for (var index = 0; index < known.Count; index++)
        {
            if (known[index] == word)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>The words in a row, the last two joined by "or".</summary>
    internal static string Listed(IReadOnlyList<string> words) => words.Count switch
    {
        0 => string.Empty,
        1 => words[0],
        _ => $"{string.Join(", ", words.Take(words.Count - 1))} or {words[^1]}",
    };
}
