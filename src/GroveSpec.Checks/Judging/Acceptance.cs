using System.Collections.Immutable;
using GroveSpec.Model;

namespace GroveSpec.Checks.Judging;

/// <summary>The remedy that lets a finding stand, with a reason for the grower to write.</summary>
internal static class Acceptance
{
    /// <summary>Writes an accept statement behind the last of its kind, or behind the last trunk.</summary>
    /// <param name="context">The planting.</param>
    /// <param name="check">The check.</param>
    /// <param name="trunks">The trunks the finding is about.</param>
    /// <returns>The remedy; none when there is no statement to write it behind.</returns>
    public static ImmutableArray<Remedy> Offer(CheckContext context, CheckDescription check, ImmutableArray<string> trunks)
    {
        if (Last(context.Planting) is not { } last)
        {
            return [];
        }

        var names = trunks.IsEmpty ? "" : " " + string.Join(' ', trunks);
        var edit = context.Origins.WriteBehind(last, $"accept {check.Name}{names} because \"write the reason here\"");
        var about = trunks.IsEmpty ? "" : $" of {Wording.List(trunks)}";
        return [new Remedy($"let {check.Name}{about} stand, with a reason", [edit])];
    }

    private static Origin? Last(Planting planting) =>
        !planting.Accepted.IsEmpty ? planting.Accepted[^1].Origin
        : !planting.Tolerances.IsEmpty ? planting.Tolerances[^1].Origin
        : !planting.Trunks.IsEmpty ? planting.Trunks[^1].Origin
        : null;
}
