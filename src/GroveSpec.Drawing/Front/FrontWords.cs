using System.Text;
using GroveSpec.Craft.Views;
using GroveSpec.Drawing.Scene;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.States;

namespace GroveSpec.Drawing.Front;

/// <summary>What the front plate says in words.</summary>
internal static class FrontWords
{
    private const int MostToldTrunks = 60;

    /// <summary>The planting's name, or what to call it without one.</summary>
    /// <param name="state">The planting.</param>
    /// <returns>Its name as written.</returns>
    public static string NameOf(PlantingState state) => state.Planting.Name?.Value ?? "Planting without a name";

    /// <summary>The line below the name: from where it is seen, and what the heights mean.</summary>
    /// <param name="frame">The viewer's eye.</param>
    /// <param name="heightUnit">The unit of the scale; null for a plate without one.</param>
    /// <param name="units">The units that are read.</param>
    /// <returns>The line.</returns>
    public static string Remark(ViewFrame frame, string? heightUnit, UnitSystem units)
    {
        var text = new StringBuilder("from ").Append(SideOf(frame.From)).Append(", ")
            .Append(DrawnLength.Text(frame.Distance, units)).Append(" away, eye at ").Append(DrawnLength.Text(frame.EyeHeight, units));
        if (heightUnit is not null)
        {
            text.Append(" · heights in ").Append(heightUnit switch { "in" => "inches", "ft" => "feet", _ => heightUnit }).Append(", measured at the plan’s origin");
        }

        return text.ToString();
    }

    /// <summary>The description for those who do not see the plate: every trunk from left to right.</summary>
    /// <param name="state">The planting.</param>
    /// <param name="view">What is seen of it.</param>
    /// <param name="units">The units that are read.</param>
    /// <returns>A few sentences.</returns>
    public static string Describe(PlantingState state, FrontView view, UnitSystem units)
    {
        var text = new StringBuilder();
        text.Append(view.Trunks.Length switch
        {
            0 => "No standing trunk is seen",
            1 => "One trunk is seen",
            var count => $"{count} trunks are seen",
        });
        text.Append(' ').Append(Remark(view.Frame, null, units)).Append('.');
        if (view.Trunks.Length > 0)
        {
            text.Append(" From left to right: ");
            for (var index = 0; index < Math.Min(MostToldTrunks, view.Trunks.Length); index++)
            {
                text.Append(index == 0 ? "" : "; ");
                Tell(text, view.Trunks[index], units);
            }

            text.Append(view.Trunks.Length > MostToldTrunks ? $"; and {view.Trunks.Length - MostToldTrunks} more." : ".");
        }

        foreach (var (presence, words) in (ReadOnlySpan<(Presence, string)>)[(Presence.Planned, "Planned"), (Presence.Removed, "Taken out")])
        {
            var names = state.Trunks.Where(trunk => trunk.Presence == presence).Take(MostToldTrunks).Select(trunk => DrawnText.Isolated(trunk.Name)).ToList();
            if (names.Count > 0)
            {
                text.Append(' ').Append(words).Append(": ").AppendJoin(", ", names).Append('.');
            }
        }

        return text.ToString();
    }

    /// <summary>The remarks at the foot of the plate: what broken lines mean, what was assumed, what is not seen.</summary>
    /// <param name="state">The planting.</param>
    /// <param name="view">What is seen of it.</param>
    /// <param name="showsHidden">Whether hidden trunks are drawn broken.</param>
    /// <param name="hasNames">Whether names stand below the picture.</param>
    /// <returns>The remarks, none empty.</returns>
    public static List<string> Notes(PlantingState state, FrontView view, bool showsHidden, bool hasNames)
    {
        var notes = new List<string>();
        var broken = new List<string>();
        foreach (var presence in (ReadOnlySpan<Presence>)[Presence.Planned, Presence.Removed])
        {
            if (state.Trunks.Any(trunk => trunk.Presence == presence && trunk.Place is not null))
            {
                broken.Add(TrunkPainter.KeyOf(presence)!);
            }
        }

        if (showsHidden)
        {
            broken.Add("A dotted outline is behind another trunk.");
        }

        if (broken.Count > 0)
        {
            notes.Add(string.Join(" ", broken));
        }

        if (view.Trunks.IsEmpty)
        {
            notes.Add(state.Trunks.Any(trunk => trunk.Presence == Presence.Standing)
                ? "No standing trunk can be drawn: give each a place, with “at” or by tape readings, before the eye."
                : "No trunk stands yet on this day.");
        }

        AddNames(notes, "Height not known, drawn from the diameter: ", view.Trunks.Where(trunk => !HasHeight(trunk) && trunk.Trunk.Diameter is not null).Select(trunk => trunk.Name));
        AddNames(notes, "Diameter not known, drawn from the height: ", view.Trunks.Where(trunk => HasHeight(trunk) && trunk.Trunk.Diameter is null).Select(trunk => trunk.Name));
        AddNames(notes, "Neither height nor diameter known, drawn at a usual size: ", view.Trunks.Where(trunk => !HasHeight(trunk) && trunk.Trunk.Diameter is null).Select(trunk => trunk.Name));
        AddNames(notes, "Beside or behind the eye, not seen: ", view.Unseen.Select(trunk => trunk.Name));
        AddNames(notes, "Place not known, not drawn: ", state.Trunks.Where(trunk => trunk is { Place: null, Presence: not Presence.Removed }).Select(trunk => trunk.Name));
        if (!hasNames && !view.Trunks.IsEmpty)
        {
            notes.Add("So many trunks stand here that their names are left out.");
        }

        return notes;
    }

    private static bool HasHeight(SeenTrunk trunk) => trunk.Trunk.Height is not null || !trunk.Trunk.Trunk.Line.IsEmpty;

    private static void AddNames(List<string> notes, string words, IEnumerable<string> names)
    {
        const int Most = 8;
        var all = names.ToList();
        if (all.Count > 0)
        {
            var told = string.Join(", ", all.Take(Most).Select(DrawnText.Isolated));
            notes.Add(words + told + (all.Count > Most ? $" and {all.Count - Most} more" : ""));
        }
    }

    private static void Tell(StringBuilder text, SeenTrunk trunk, UnitSystem units)
    {
        text.Append(DrawnText.Isolated(trunk.Name));
        if (trunk.Trunk.Diameter is { } diameter)
        {
            text.Append(", ").Append(DrawnLength.Text(diameter.Value, units)).Append(" thick");
        }

        if (trunk.Trunk.Height is { } height)
        {
            text.Append(", ").Append(DrawnLength.Text(height.Value, units)).Append(" tall");
        }

        if (trunk.Hidden is { Share: >= 0.1 } hidden)
        {
            text.Append(", ").Append(DrawnLength.Plain(hidden.Percent, 0)).Append(" % hidden");
        }
    }

    private static string SideOf(Bearing from) => from.Degrees switch
    {
        0 => "the back",
        90 => "the right",
        180 => "the front",
        270 => "the left",
        var degrees => $"{DrawnLength.Plain(degrees, 1)}°",
    };
}
