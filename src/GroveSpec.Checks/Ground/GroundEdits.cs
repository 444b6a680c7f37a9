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
    /// <returns>One more trunk's statement behind the last trunk's; the trunk's own place changed, or written behind its name where it is planned and has none; none where <see cref="WhyNot"/> tells why.</returns>
    public static ImmutableArray<TextEdit> Of(CheckContext context, TrunkState trunk, PlanPoint place)
    {
        if (trunk.Trunk.Origin != Origin.Default)
        {
            return WhyNot(context, trunk) is not null ? []
                : trunk.Trunk.At is null ? [Behind(context.Origins.Locate(trunk.Trunk.Origin), PlaceWording.Say(place, context.Units))]
                : FootEdits.Of(context, trunk.Trunk, place);
        }

        var behind = !context.Planting.Trunks.IsEmpty ? context.Planting.Trunks[^1].Origin : context.Planting.Name?.Origin;
        return behind is { } origin
            ? [context.Origins.WriteBehind(origin, $"trunk {trunk.Name}   {PlaceWording.Say(place, context.Units)}   diameter {Size(trunk.Diameter!.Value.Value, context.Units)}{(trunk.Height is { } height ? $"   height {Size(height.Value, context.Units)}" : "")}")]
            : [];
    }

    /// <summary>Why the place of a trunk is not written.</summary>
    /// <param name="context">The planting.</param>
    /// <param name="newcomer">The trunk that ground was looked for.</param>
    /// <returns>A sentence with what to do; null where it is written.</returns>
    public static string? WhyNot(CheckContext context, TrunkState newcomer)
    {
        var (trunk, name) = (newcomer.Trunk, Wording.Name(newcomer.Name));
        if (trunk.Origin == Origin.Default)
        {
            return null;
        }

        if (context.Planting.IsFixed(trunk))
        {
            return $"{name} is fixed{(trunk.Fixed is null ? ", as all bases of a clump or raft are" : "")}, so nothing is offered to be written: the ground only shows where it could have stood.";
        }

        if (trunk.At is not null)
        {
            return TapeTies.WhyNotMoved(context, trunk.Name, "so nothing is offered to be written");
        }

        var isTaped = context.Planting.Tapes.Any(tape => tape.From == trunk.Name || tape.To == trunk.Name);
        return context.Origins.Locate(trunk.Origin.Part("at")) != context.Origins.Locate(trunk.Origin)
            ? $"The place of {name} could not be read, so nothing is offered to be written: put its line right first."
            : context.State.Trunks.Any(other => other is { Presence: Presence.Standing } && other.Name == trunk.Name)
            ? $"The file gives {name} no \"at\" of its own, so nothing is offered to be written: write down where it stands first{(isTaped ? ", with survey --write" : "")}."
            : isTaped ? $"Tape readings say where {name} goes, so nothing is offered to be written: take them out of the file first." : null;
    }

    private static TextEdit Behind(SourceSpan name, string clause) => new(name with { Span = new(name.Span.End, 0) }, "   " + clause);

    private static string Size(Length length, UnitSystem units) => units == UnitSystem.Inch
        ? $"{LengthWording.Say(length.Inches, 5)} in"
        : $"{LengthWording.Say(length.Millimetres, 3)} mm";
}
