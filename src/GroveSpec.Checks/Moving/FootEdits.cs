using System.Collections.Immutable;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.Trunks;
using GroveSpec.Syntax.Text;

namespace GroveSpec.Checks.Moving;

/// <summary>Writes a trunk's foot elsewhere. A run that is written out goes with it.</summary>
public static class FootEdits
{
    /// <summary>The edits of a move.</summary>
    /// <param name="context">The planting.</param>
    /// <param name="trunk">A trunk with an <c>at</c>, or with a run that says where its foot is.</param>
    /// <param name="place">Where its foot goes.</param>
    /// <returns>The edits of its <c>at</c> and of its <c>line</c>, whichever it has.</returns>
    public static ImmutableArray<TextEdit> Of(CheckContext context, Trunk trunk, PlanPoint place)
    {
        ArgumentNullException.ThrowIfNull(context);
        ArgumentNullException.ThrowIfNull(trunk);
        var at = trunk.At!.Value;
        var isPlacedByRun = trunk.LineOrigin == at.Origin;
        ImmutableArray<TextEdit> foot = isPlacedByRun ? [] : [ClauseEdit.Write(context.Origins, trunk, at.Origin, PlaceWording.Say(place, context.Units))];
        return [.. foot, .. OfRun(context, trunk, RunAt(trunk, place))];
    }

    /// <summary>A trunk's run once its foot is elsewhere.</summary>
    /// <param name="trunk">A trunk with a place in the file.</param>
    /// <param name="place">Where its foot goes.</param>
    /// <returns>The run, shifted; empty where none is written out.</returns>
    internal static ImmutableArray<SpacePoint> RunAt(Trunk trunk, PlanPoint place)
    {
        var from = trunk.At!.Value.Value;
        return [.. trunk.Line.Select(point => new SpacePoint(point.X + (place.X - from.X), point.Y + (place.Y - from.Y), point.Z))];
    }

    /// <summary>The edit of a run.</summary>
    /// <param name="context">The planting.</param>
    /// <param name="trunk">The trunk.</param>
    /// <param name="line">Its new run.</param>
    /// <returns>The edit of its <c>line</c>; none where it has none.</returns>
    internal static ImmutableArray<TextEdit> OfRun(CheckContext context, Trunk trunk, ImmutableArray<SpacePoint> line)
    {
        if (trunk.LineOrigin is not { } origin)
        {
            return [];
        }

        var isInch = context.Units == UnitSystem.Inch;
        var points = line.Select(point => $"({Number(point.X)},{Number(point.Y)},{Number(point.Z)})");
        return [ClauseEdit.Write(context.Origins, trunk, origin, $"line {string.Join(' ', points)} {(isInch ? "in" : "mm")}")];

        string Number(Length length) => isInch ? LengthWording.Say(length.Inches, 5) : LengthWording.Say(length.Millimetres, 3);
    }
}
