using System.Collections.Immutable;
using GroveSpec.Binding.Names;
using GroveSpec.Binding.Quantities;
using GroveSpec.Checks;
using GroveSpec.Model;
using GroveSpec.Model.Containers;
using GroveSpec.Model.Quantities;
using GroveSpec.Syntax.Tree;

namespace GroveSpec.Binding.Statements;

/// <summary>Binds what a planting stands in.</summary>
/// <param name="scope">The file.</param>
internal sealed class ContainerBinder(BindingScope scope)
{
    /// <summary>Outlines with more corners are not searched for edges that cross.</summary>
    private const int MostCorners = 400;

    /// <summary>Binds a container.</summary>
    /// <param name="statement">The statement; its shape was read.</param>
    /// <param name="origin">Its origin.</param>
    /// <returns>The container; null where it cannot be taken, which is told.</returns>
    public Container? Bind(Statement.Container statement, Origin origin)
    {
        var shape = statement.Shape!;
        switch (shape.Text)
        {
            case "oval" or "rectangle":
                if (!HasDimensions(statement, 3, "a width, a breadth and a depth, such as 400 x 260 x 45 mm"))
                {
                    return null;
                }

                var sizes = Dimensions(statement, "The container's width", "The container's breadth", "The container's depth");
                return sizes is not [{ } width, { } breadth, { } depth] ? null
                    : shape.Text == "oval" ? new Container.Oval(width, breadth) { Depth = depth, Origin = origin }
                    : new Container.Rectangle(width, breadth) { Depth = depth, Origin = origin };
            case "round":
                if (!HasDimensions(statement, 2, "a diameter and a depth, such as 360 x 40 mm"))
                {
                    return null;
                }

                return Dimensions(statement, "The container's diameter", "The container's depth") is not [{ } across, { } deep]
                    ? null
                    : new Container.Round(across) { Depth = deep, Origin = origin };
            case "slab":
                return Slab(statement, origin);
            default:
                scope.TellWord(shape, "a shape of container", Words.Shapes);
                return null;
        }
    }

    private bool HasDimensions(Statement.Container statement, int wanted, string words)
    {
        if (statement.Dimensions.Length == wanted)
        {
            return true;
        }

        if (!statement.IsBroken)
        {
            scope.Tell(FileDescriptions.OutOfRange, statement.Span, $"A container that is {statement.Shape!.Text} has {words}.");
        }

        return false;
    }

    private Length?[] Dimensions(Statement.Container statement, params ReadOnlySpan<string> names)
    {
        var lengths = new Length?[names.Length];
        NameSyntax? unit = null;
        for (var index = names.Length - 1; index >= 0; index--)
        {
            unit = statement.Dimensions[index].Unit ?? unit;
            lengths[index] = scope.Quantities.Length(statement.Dimensions[index], names[index], Bound.AboveZero, unit);
        }

        return lengths;
    }

    private Container.Slab? Slab(Statement.Container statement, Origin origin)
    {
        if (statement.Depth is not { } depthSyntax)
        {
            return null;
        }

        var corners = Corners(statement.Corners);
        var depth = scope.Quantities.Length(depthSyntax, "The slab's depth", Bound.AboveZero);
        if (corners is not { } outline || depth is not { } deep)
        {
            return null;
        }

        if (outline.Length < 3)
        {
            scope.Tell(FileDescriptions.OutOfRange, statement.Span, $"A slab needs at least three corners; here are {outline.Length}.");
            return null;
        }

        if (TwiceArea(outline) == 0)
        {
            scope.Tell(FileDescriptions.OutOfRange, statement.Span, "The slab's corners stand in one line or go nowhere: it has no surface.");
            return null;
        }

        if (outline.Length <= MostCorners && CrossingEdge(outline) is { } edge)
        {
            scope.Tell(FileDescriptions.OutOfRange, statement.Corners[edge].Span, "The slab's edge crosses itself here: give the corners in order round the edge.");
            return null;
        }

        return new Container.Slab(outline) { Depth = deep, Origin = origin };
    }

    private ImmutableArray<PlanPoint>? Corners(ImmutableArray<PlanPointSyntax> points)
    {
        var corners = new PlanPoint[points.Length];
        NameSyntax? unit = null;
        var areAllKnown = true;
        for (var index = points.Length - 1; index >= 0; index--)
        {
            unit = points[index].Y.Unit ?? unit;
            var y = scope.Quantities.Length(points[index].Y, "A corner's second number", Bound.None, unit);
            var x = scope.Quantities.Length(points[index].X, "A corner's first number", Bound.None, points[index].X.Unit ?? unit);
            areAllKnown &= x is not null && y is not null;
            corners[index] = new PlanPoint(x ?? Length.Zero, y ?? Length.Zero);
        }

        return areAllKnown ? [.. corners] : null;
    }

    private static Int128 TwiceArea(ImmutableArray<PlanPoint> outline)
    {
        Int128 sum = 0;
        for (var index = 0; index < outline.Length; index++)
        {
            var here = outline[index];
            var next = outline[(index + 1) % outline.Length];
            sum += ((Int128)here.X.Nanometres * next.Y.Nanometres) - ((Int128)next.X.Nanometres * here.Y.Nanometres);
        }

        return sum;
    }

    private static int? CrossingEdge(ImmutableArray<PlanPoint> outline)
    {
        var count = outline.Length;
        for (var first = 0; first < count; first++)
        {
            for (var second = first + 2; second < count; second++)
            {
                if ((second + 1) % count != first && Cross(outline[first], outline[first + 1], outline[second], outline[(second + 1) % count]))
                {
                    return second;
                }
            }
        }

        return null;
    }

    private static bool Cross(PlanPoint a, PlanPoint b, PlanPoint c, PlanPoint d) =>
        Turn(a, b, c) * Turn(a, b, d) < 0 && Turn(c, d, a) * Turn(c, d, b) < 0;

    private static int Turn(PlanPoint a, PlanPoint b, PlanPoint c) => Int128.Sign(
        ((Int128)(b.X - a.X).Nanometres * (c.Y - a.Y).Nanometres) - ((Int128)(b.Y - a.Y).Nanometres * (c.X - a.X).Nanometres));
}
