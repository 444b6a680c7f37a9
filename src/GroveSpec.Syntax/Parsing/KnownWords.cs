namespace GroveSpec.Syntax.Parsing;

/// <summary>The words among which a grower chooses where the language leaves a choice.</summary>
internal static class KnownWords
{
    public static IReadOnlyList<string> Habits => ["clump", "group", "raft"];

    public static IReadOnlyList<string> ContainerShapes => ["oval", "rectangle", "round", "slab"];

    public static IReadOnlyList<string> Hemispheres => ["N", "S"];

    public static IReadOnlyList<string> Forms => ["balanced", "stout", "slender"];

    public static IReadOnlyList<string> Vigours => ["push", "steady", "restrain"];

    public static IReadOnlyList<string> TaskKinds =>
    [
        "wire", "unwire", "look-over", "prune", "pinch", "disbud", "defoliate", "sacrifice", "remove-sacrifice", "repot",
        "root-prune", "feed", "shelter", "graft", "seal", "measure", "photograph", "other",
    ];

    public static IReadOnlyList<string> Seasons => ["spring", "summer", "autumn", "winter"];

    public static IReadOnlyList<string> SeasonParts => ["early", "mid", "late"];

    public static IReadOnlyList<string> Stages => ["bud-break", "leaf-out", "harden-off", "midsummer", "leaf-colour", "leaf-fall", "dormant"];

    public static IReadOnlyList<string> Metals => ["aluminium", "copper"];

    public static IReadOnlyList<string> Sides => ["back", "front", "left", "right"];

    public static IReadOnlyList<string> LeafHabits => ["deciduous", "deciduous-conifer", "semi-evergreen", "evergreen", "conifer", "tropical"];

    public static IReadOnlyList<string> Paces => ["slow", "medium", "fast"];

    public static IReadOnlyList<string> Flushes => ["single", "partial", "repeated", "continuous"];

    public static IReadOnlyList<string> Anchors => ["solstice"];

    public static IReadOnlyList<string> Months =>
    [
        "January", "February", "March", "April", "May", "June", "July", "August", "September", "October", "November", "December",
        "Jan", "Feb", "Mar", "Apr", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec",
    ];

    /// <summary>Whether a list holds a word, as written.</summary>
    public static bool Has(IReadOnlyList<string> known, string word)
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
    public static string Listed(IReadOnlyList<string> words) => words.Count switch
    {
        0 => string.Empty,
        1 => words[0],
        _ => $"{string.Join(", ", words.Take(words.Count - 1))} or {words[^1]}",
    };
}
