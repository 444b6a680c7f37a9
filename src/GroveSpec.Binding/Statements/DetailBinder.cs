using GroveSpec.Binding.Names;
using GroveSpec.Binding.Quantities;
using GroveSpec.Checks;
using GroveSpec.Model;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.Tasks;
using GroveSpec.Syntax.Tree;

namespace GroveSpec.Binding.Statements;

/// <summary>Binds how a task is done.</summary>
/// <param name="scope">The file.</param>
internal sealed class DetailBinder(BindingScope scope)
{
    /// <summary>Binds a clause of detail.</summary>
    /// <param name="clause">The clause.</param>
    /// <param name="origin">Its origin.</param>
    /// <returns>What it says; null for any other clause, and for one that cannot be taken, which is told.</returns>
    public TaskDetail? Bind(Clause clause, Origin origin) => clause switch
    {
        Clause.WithWire wire => Wire(wire, origin),
        Clause.Coil coil => scope.Quantities.Angle(coil.Angle, "The coil's angle from the trunk's axis", 0, 90, isMostIncluded: false) is { } angle
            ? new TaskDetail.Coil(angle) { Origin = origin }
            : null,
        Clause.Stretch stretch => Stretch(stretch, origin),
        Clause.Bend bend => Bend(bend, origin),
        Clause.Position position => Choose(position.Word, "a height on the trunk", Words.Positions) is { } index
            ? new TaskDetail.At((TrunkPosition)index) { Origin = origin }
            : null,
        Clause.Facing facing => Side(facing) is { } side ? new TaskDetail.Facing(side) { Origin = origin } : null,
        _ => null,
    };

    private TaskDetail.WithWire? Wire(Clause.WithWire wire, Origin origin)
    {
        var strands = wire.Strands is { } written ? scope.Quantities.Count(written, "The number of wires side by side", 1, 20) : 1;
        var metal = Choose(wire.Metal, "a metal for wire", Words.Metals);
        var diameter = scope.Quantities.Length(wire.Diameter, "The wire's diameter", Bound.AboveZero);
        return strands is { } count && metal is { } index && diameter is { } thick
            ? new TaskDetail.WithWire((WireMetal)index, thick, count) { Origin = origin }
            : null;
    }

    private TaskDetail.Span? Stretch(Clause.Stretch stretch, Origin origin)
    {
        var from = scope.Quantities.Length(stretch.From, "The lower end of the wired part", Bound.Zero, stretch.To.Unit);
        var to = scope.Quantities.Length(stretch.To, "The upper end of the wired part", Bound.AboveZero);
        if (from is not { } start || to is not { } end)
        {
            return null;
        }

        if (start < end)
        {
            return new TaskDetail.Span(start, end) { Origin = origin };
        }

        scope.Tell(
            FileDescriptions.EndsBeforeStart,
            stretch.Span,
            $"The wired part ends at {LengthWording.Say(end, UnitSystem.Metric)}, not above where it begins, at {LengthWording.Say(start, UnitSystem.Metric)}: write the lower end first.");
        return null;
    }

    private TaskDetail.Bend? Bend(Clause.Bend bend, Origin origin)
    {
        var angle = scope.Quantities.Angle(bend.Angle, "The bend", 0, 180, isMostIncluded: true);
        var toward = scope.Quantities.Bearing(bend.Toward, "The bearing of the bend");
        var over = bend.Over is { } written ? scope.Quantities.Length(written, "The length over which it is bent", Bound.AboveZero) : null;
        return angle is { } turn && toward is { } way && (bend.Over is null || over is not null)
            ? new TaskDetail.Bend(turn, way, over) { Origin = origin }
            : null;
    }

    private Bearing? Side(Clause.Facing facing)
    {
        if (facing.Bearing is { } bearing)
        {
            return scope.Quantities.Bearing(bearing, "The side");
        }

        return facing.Word is { } word && Choose(word, "a side", Words.Sides) is { } quarter ? new Bearing(quarter * 90) : null;
    }

    private int? Choose(NameSyntax word, string what, IReadOnlyList<string> words)
    {
        var index = Words.IndexOf(words, word.Text);
        if (index >= 0)
        {
            return index;
        }

        scope.TellWord(word, what, words);
        return null;
    }
}
