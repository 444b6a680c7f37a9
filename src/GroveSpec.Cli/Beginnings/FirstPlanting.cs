using System.Collections.Immutable;
using System.Text;
using GroveSpec.Model;

namespace GroveSpec.Cli.Beginnings;

/// <summary>Writes the planting that someone starts from: every line explained, nothing in it that check would warn of.</summary>
internal static class FirstPlanting
{
    /// <summary>The fewest trunks.</summary>
    public const int FewestTrunks = 3;

    /// <summary>The most trunks; a name for each is in <see cref="Letters"/>.</summary>
    public const int MostTrunks = 15;

    // I and O are left out: beside numbers they read as 1 and 0.
    private const string Letters = "ABCDEFGHJKLMNPQ";

    /// <summary>Writes it.</summary>
    /// <param name="wanted">What it is to be.</param>
    /// <returns>The text of a file, the same for the same wishes.</returns>
    public static string Write(Beginning wanted)
    {
        var trunks = GroundSearch.Place(wanted.Trunks, places => Assemble(wanted, places, hasNotes: false));
        return Assemble(wanted, trunks, hasNotes: true);
    }

    private static string Assemble(Beginning wanted, ImmutableArray<(int Right, int Back)> places, bool hasNotes)
    {
        var text = new StringBuilder();
        Head(text, wanted, hasNotes);
        for (var index = 0; index < places.Length; index++)
        {
            var (right, back) = places[index];

            // Each trunk is thinner and lower than the one before by more than what check takes for the same size.
            var diameter = Math.Round(40 * Math.Pow(0.885, index));
            var height = Math.Round(460 * Math.Pow(0.9, index));
            text.Append($"trunk {Letters[index]}   {$"at {right}, {back} mm",-18}{$"diameter {diameter} mm",-17}{$"height {height} mm",-16}role {(index == 0 ? "main" : "company")}\n");
        }

        Roles(text, hasNotes);
        return text.ToString();
    }

    private static void Head(StringBuilder text, Beginning wanted, bool hasNotes)
    {
        var width = GroundSearch.WidthFor(wanted.Trunks);
        text.Append(!hasNotes ? "" : "# A first planting: change each line to what stands before you. Text behind # is for you alone.\n");
        text.Append($"planting  \"{wanted.Name}\"\n");
        text.Append($"habit     {Word(wanted.Habit)}{(!hasNotes ? "" : "    # group: separate trees · clump: one root base · raft: one laid trunk")}\n");
        text.Append(wanted.Species is { } species ? $"species   {species}\n" : !hasNotes ? "" : "# species larix-kaempferi    # the species of all trunks, once you have chosen\n");
        text.Append($"container oval {width} x {GroundSearch.DepthFor(wanted.Trunks)} x 40 mm    # wide x deep x high; or rectangle, round, slab\n");
        text.Append($"viewed    from 180 deg, at {3 * width} mm, eye 160 mm    # 0 the back, 90 the right, 180 the front, 270 the left\n");
        text.Append(!hasNotes ? "" : "concept   \"One line on what this planting tells.\"\n");
        text.Append(!hasNotes ? "" : "\n# Where each trunk stands, from the middle of the container: to the right, then to the back; left and front are negative.\n");
    }

    private static void Roles(StringBuilder text, bool hasNotes)
    {
        text.Append(hasNotes ? "\n# What each is meant to become.\n" : "");
        text.Append("role main    { vigour push     rank 1   story \"leads\" }\n");
        text.Append("role company { vigour steady   keep height under 450 mm   story \"follows\" }\n");
        if (!hasNotes)
        {
            return;
        }

        text.Append("""

            # Work, readings and what you let stand, as they come. Take the # away to begin with one.
            # task W1  wire    on B   in late autumn 2027   with aluminium 2.5 mm, coil 50 deg
            # task U1  unwire  of W1  6 to 8 weeks after W1
            # measured 2027-10-30 {
            #   A  diameter 41 mm   height 470 mm
            # }
            # accept three-in-line A B C because "the reason you let it stand"

            """);
    }

    private static string Word(Habit habit) => habit switch
    {
        Habit.Clump => "clump",
        Habit.Raft => "raft",
        _ => "group",
    };
}
