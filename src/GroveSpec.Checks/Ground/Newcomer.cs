using System.Globalization;
using GroveSpec.Model;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.States;
using GroveSpec.Model.Trunks;

namespace GroveSpec.Checks.Ground;

/// <summary>The trunk that ground is looked for.</summary>
internal static class Newcomer
{
    /// <summary>The trunk of a wish, standing.</summary>
    /// <param name="context">The planting.</param>
    /// <param name="wish">The wish, with no obstacle in its way.</param>
    /// <returns>The trunk; of one more the place is the origin, and its name is free.</returns>
    public static TrunkState Of(CheckContext context, GroundWish wish)
    {
        if (wish.Of is { } name)
        {
            var named = context.State.Trunks.First(trunk => trunk.Name == name && trunk.Presence != Presence.Removed);
            return named with
            {
                Presence = Presence.Standing,
                Place = named.Place ?? PlanPoint.Origin,
                Diameter = wish.Diameter is { } diameter ? Said(diameter) : named.Diameter,
                Height = wish.Height is { } height ? Said(height) : named.Height,
            };
        }

        return new TrunkState
        {
            Trunk = new Trunk { Name = FreeNameOf(context), Origin = Origin.Default },
            Presence = Presence.Standing,
            Place = PlanPoint.Origin,
            Diameter = Said(wish.Diameter!.Value),
            Height = wish.Height is { } high ? Said(high) : null,
        };
    }

    private static Stated<Length> Said(Length length) => new(length, Origin.Default);

    /// <summary>The letter behind the last trunk's that nothing in the file is named by; where its name is no letter, its number raised, or a plain word with a number.</summary>
    private static string FreeNameOf(CheckContext context)
    {
        var planting = context.Planting;
        var taken = planting.Trunks.Select(trunk => trunk.Name).Concat(planting.Tasks.Select(task => task.Name)).Concat(planting.Roles.Select(role => role.Name)).ToHashSet(StringComparer.Ordinal);
        var last = planting.Trunks.IsEmpty ? "" : planting.Trunks[^1].Name;
        if (last is [>= 'A' and <= 'Z'])
        {
            for (var letter = last[0]; letter <= 'Z'; letter++)
            {
                if (!taken.Contains(letter.ToString()))
                {
                    return letter.ToString();
                }
            }
        }

        var letters = last.TrimEnd('0', '1', '2', '3', '4', '5', '6', '7', '8', '9');
        var hasNumber = letters.Length is > 0 && letters.Length < last.Length && last.Length - letters.Length <= 6;
        var stem = hasNumber ? letters : last.Length == 0 ? "T" : "new-";
        var number = hasNumber ? int.Parse(last.AsSpan(letters.Length), CultureInfo.InvariantCulture) + 1 : 1;
        string name;
        do
        {
            name = string.Create(CultureInfo.InvariantCulture, $"{stem}{number++}");
        }
        while (taken.Contains(name));
        return name;
    }
}
