using System.Collections.Immutable;
using GroveSpec.Checks.Moving;
using GroveSpec.Model;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.States;
using GroveSpec.Syntax.Text;

namespace GroveSpec.Checks.Ground;

/// <summary>Writes a spot into the file.</summary>
internal static class GroundEdits
{
    /// <summary>The edits of a spot.</summary>
    /// <param name="context">The planting.</param>
    /// <param name="trunk">The trunk.</param>
    /// <param name="place">The spot.</param>
    /// <returns>One more trunk's statement behind the last trunk's, or the trunk's own <c>at</c> changed; none for a trunk that is fixed or has no <c>at</c>.</returns>
    public static ImmutableArray<TextEdit> Of(CheckContext context, TrunkState trunk, PlanPoint place)
    {
        if (trunk.Trunk.Origin != Origin.Default)
        {
            return trunk.Trunk.At is { } at && !context.Planting.IsFixed(trunk.Trunk)
                ? [new TextEdit(context.Origins.Locate(at.Origin), PlaceWording.Say(place, context.Units))]
                : [];
        }

        var behind = !context.Planting.Trunks.IsEmpty ? context.Planting.Trunks[^1].Origin : context.Planting.Name?.Origin;
        return behind is { } origin
            ? [context.Origins.WriteBehind(origin, $"trunk {trunk.Name}   {PlaceWording.Say(place, context.Units)}   diameter {Size(trunk.Diameter!.Value.Value, context.Units)}{(trunk.Height is { } height ? $"   height {Size(height.Value, context.Units)}" : "")}")]
            : [];
    }

    private static string Size(Length length, UnitSystem units) => units == UnitSystem.Inch
        ? $"{LengthWording.Say(length.Inches, 5)} in"
        : $"{LengthWording.Say(length.Millimetres, 3)} mm";
}
