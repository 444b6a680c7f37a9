using System.Collections.Immutable;
using GroveSpec.Syntax.Tree;

namespace GroveSpec.Syntax.Printing;

/// <summary>Finds the bare numbers of a statement whose unit the language gives, so that it can be written out.</summary>
internal sealed class DefaultUnits
{
    private readonly Dictionary<int, string> units = [];

    /// <summary>The unit to write behind the token that ends at a place; null when none is to be written.</summary>
    public string? At(int end) => units.GetValueOrDefault(end);

    /// <summary>Looks through a statement.</summary>
    public void Collect(Statement statement)
    {
        units.Clear();
        switch (statement)
        {
            case Statement.Trunk trunk:
                Collect(trunk.Clauses);
                break;
            case Statement.Role role:
                Collect(role.Clauses);
                break;
            case Statement.Task task:
                Collect(task.Clauses);
                break;
            case Statement.Site site:
                Collect(site.Clauses);
                break;
            case Statement.Viewed viewed:
                Collect(viewed.Clauses);
                break;
            case Statement.Tape tape:
                Add(tape.Distance, "mm");
                break;
            case Statement.Container container:
                Collect(container);
                break;
            case Statement.Measured measured:
                foreach (var reading in measured.Readings)
                {
                    Collect(reading.Values);
                }

                break;
            case Statement.Profile profile:
                foreach (var entry in profile.Entries)
                {
                    if (entry.Keyword.Text == "bend-limit" && entry.Values is [QuantitySyntax share])
                    {
                        Add(share, "%");
                    }
                }

                break;
        }
    }

    private void Collect(Statement.Container container)
    {
        Add(container.Depth, "mm");
        if (container.Dimensions is [.., var last])
        {
            Add(last, "mm");
        }

        if (container.Corners is [.., { Y.Unit: null } corner])
        {
            units[corner.Span.End] = "mm";
        }
    }

    private void Collect(ImmutableArray<Clause> clauses)
    {
        foreach (var clause in clauses)
        {
            Collect(clause);
        }
    }

    private void Collect(Clause clause)
    {
        switch (clause)
        {
            case Clause.At at:
                Add(at.Point.Y, "mm");
                break;
            case Clause.Thickness thickness:
                Add(thickness.Quantity, "mm");
                break;
            case Clause.Height height:
                Add(height.Quantity, "mm");
                break;
            case Clause.Crown crown:
                Add(crown.Radius, "mm");
                break;
            case Clause.Lean lean:
                Add(lean.Angle, "deg");
                Add(lean.Toward, "deg");
                break;
            case Clause.Line { Points: [.., { Z.Unit: null } point] }:
                units[point.Span.End] = "mm";
                break;
            case Clause.Aim aim:
                Add(aim.Quantity, "mm");
                break;
            case Clause.Keep keep:
                Add(keep.Quantity, "mm");
                break;
            case Clause.Means { Temperatures: [.., var last] }:
                Add(last, "C");
                break;
            case Clause.Sun sun:
                Add(sun.From, "deg");
                break;
            case Clause.ViewedFrom from:
                Add(from.Bearing, "deg");
                break;
            case Clause.ViewedAt at:
                Add(at.Distance, "mm");
                break;
            case Clause.Eye eye:
                Add(eye.AboveSoil, "mm");
                break;
            case Clause.WithWire wire:
                Add(wire.Diameter, "mm");
                break;
            case Clause.Coil coil:
                Add(coil.Angle, "deg");
                break;
            case Clause.Stretch stretch:
                Add(stretch.To, "mm");
                break;
            case Clause.Bend bend:
                Add(bend.Angle, "deg");
                Add(bend.Toward, "deg");
                Add(bend.Over, "mm");
                break;
            case Clause.Facing facing:
                Add(facing.Bearing, "deg");
                break;
        }
    }

    private void Add(QuantitySyntax? quantity, string unit)
    {
        if (quantity is { Unit: null })
        {
            units[quantity.Span.End] = unit;
        }
    }
}
