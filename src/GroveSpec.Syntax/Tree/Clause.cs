using System.Collections.Immutable;

namespace GroveSpec.Syntax.Tree;

/// <summary>One clause of a trunk, role, task, site, view or profile. Closed.</summary>
public abstract record Clause : SyntaxNode
{
    private Clause()
    {
    }

    /// <summary><c>at X, Y</c>.</summary>
    public sealed record At(PlanPointSyntax Point) : Clause;

    /// <summary><c>diameter Q</c>, or <c>girth Q</c>.</summary>
    public sealed record Thickness(bool IsGirth, QuantitySyntax Quantity) : Clause;

    /// <summary><c>height Q</c>.</summary>
    public sealed record Height(QuantitySyntax Quantity) : Clause;

    /// <summary><c>lean A toward B</c>.</summary>
    public sealed record Lean(QuantitySyntax Angle, QuantitySyntax Toward) : Clause;

    /// <summary><c>line (x,y,z) (x,y,z) …</c>.</summary>
    public sealed record Line(ImmutableArray<SpacePointSyntax> Points) : Clause;

    /// <summary><c>crown R</c>.</summary>
    public sealed record Crown(QuantitySyntax Radius) : Clause;

    /// <summary><c>role NAME</c> of a trunk.</summary>
    public sealed record Role(NameSyntax Name) : Clause;

    /// <summary><c>species NAME</c> of a trunk.</summary>
    public sealed record Species(NameSyntax Name) : Clause;

    /// <summary><c>raised YEAR</c>.</summary>
    public sealed record Raised(NameSyntax Year) : Clause;

    /// <summary><c>planned DATE</c>.</summary>
    public sealed record Planned(MomentSyntax Moment) : Clause;

    /// <summary><c>removed DATE</c>.</summary>
    public sealed record Removed(MomentSyntax Moment) : Clause;

    /// <summary><c>fixed</c>.</summary>
    public sealed record Fixed : Clause;

    /// <summary><c>form WORD</c>.</summary>
    public sealed record Form(NameSyntax Value) : Clause;

    /// <summary><c>vigour WORD</c>.</summary>
    public sealed record Vigour(NameSyntax Value) : Clause;

    /// <summary><c>aim diameter|height Q by YEAR</c>.</summary>
    public sealed record Aim(NameSyntax Dimension, QuantitySyntax Quantity, NameSyntax Year) : Clause;

    /// <summary><c>keep diameter|height under Q</c>.</summary>
    public sealed record Keep(NameSyntax Dimension, QuantitySyntax Quantity) : Clause;

    /// <summary><c>rank N</c>.</summary>
    public sealed record Rank(QuantitySyntax Number) : Clause;

    /// <summary><c>story "…"</c>.</summary>
    public sealed record Story(TextSyntax Text) : Clause;

    /// <summary><c>latitude Q N|S</c>.</summary>
    public sealed record Latitude(QuantitySyntax Quantity, NameSyntax? Hemisphere) : Clause;

    /// <summary><c>zone 8b</c>.</summary>
    public sealed record Zone(NameSyntax Value) : Clause;

    /// <summary><c>last frost D</c> or <c>first frost D</c>.</summary>
    public sealed record Frost(bool IsLast, AnnualDateSyntax Date) : Clause;

    /// <summary><c>means</c> with the temperatures that follow, as many as were written, and the unit behind them.</summary>
    public sealed record Means(ImmutableArray<QuantitySyntax> Temperatures) : Clause;

    /// <summary><c>sun from B</c>.</summary>
    public sealed record Sun(QuantitySyntax From) : Clause;

    /// <summary><c>from B</c> of a view.</summary>
    public sealed record ViewedFrom(QuantitySyntax Bearing) : Clause;

    /// <summary><c>at Q</c> of a view.</summary>
    public sealed record ViewedAt(QuantitySyntax Distance) : Clause;

    /// <summary><c>eye Q</c> of a view.</summary>
    public sealed record Eye(QuantitySyntax AboveSoil) : Clause;

    /// <summary><c>near</c> or <c>far</c> of a view.</summary>
    public sealed record Depth(NameSyntax Word) : Clause;

    /// <summary><c>on DATE</c> or <c>in SEASON YEAR</c>.</summary>
    public sealed record During(MomentSyntax Moment) : Clause;

    /// <summary><c>from T to T</c>.</summary>
    public sealed record FromTo(MomentSyntax Start, MomentSyntax? End) : Clause;

    /// <summary><c>after T</c>.</summary>
    public sealed record After(MomentSyntax Moment) : Clause;

    /// <summary><c>before T</c>.</summary>
    public sealed record Before(MomentSyntax Moment) : Clause;

    /// <summary><c>N to M UNIT after|before TASK</c>; the least is null when only one number is given.</summary>
    public sealed record Offset(QuantitySyntax? Least, QuantitySyntax Most, bool IsAfter, NameSyntax Task) : Clause;

    /// <summary><c>every N UNIT</c>.</summary>
    public sealed record Every(QuantitySyntax Interval) : Clause;

    /// <summary><c>until T</c>.</summary>
    public sealed record Until(MomentSyntax Moment) : Clause;

    /// <summary><c>with METAL Q</c>, or <c>with N x METAL Q</c>.</summary>
    public sealed record WithWire(QuantitySyntax? Strands, NameSyntax Metal, QuantitySyntax Diameter) : Clause;

    /// <summary><c>coil A</c>.</summary>
    public sealed record Coil(QuantitySyntax Angle) : Clause;

    /// <summary><c>span Q to Q</c>.</summary>
    public sealed record Stretch(QuantitySyntax From, QuantitySyntax To) : Clause;

    /// <summary><c>bend A toward B</c>, with or without <c>over Q</c>.</summary>
    public sealed record Bend(QuantitySyntax Angle, QuantitySyntax Toward, QuantitySyntax? Over) : Clause;

    /// <summary><c>low</c>, <c>middle</c> or <c>high</c> on the trunk.</summary>
    public sealed record Position(NameSyntax Word) : Clause;

    /// <summary><c>facing back|front|left|right</c>, or <c>facing B</c>.</summary>
    public sealed record Facing(NameSyntax? Word, QuantitySyntax? Bearing) : Clause;

    /// <summary><c>done DATE</c>.</summary>
    public sealed record Done(MomentSyntax.Date Date) : Clause;

    /// <summary>A task's note in quotes.</summary>
    public sealed record Note(TextSyntax Text) : Clause;
}
