using System.Collections.Immutable;

namespace GroveSpec.Syntax.Tree;

/// <summary>
/// One statement. Where a part could not be read it is null (or missing from the list), <see cref="IsBroken"/> is set,
/// and the tree holds a problem for it. Closed.
/// </summary>
public abstract record Statement : SyntaxNode
{
    private Statement()
    {
    }

    /// <summary>The first of the tokens that this statement owns, as an index into the tree's tokens. Owned tokens include blanks, comments and line ends, so that the statements of a tree own every token once and in order.</summary>
    public required int FirstToken { get; init; }

    /// <summary>How many tokens it owns.</summary>
    public required int TokenCount { get; init; }

    /// <summary>Whether some of it could not be read.</summary>
    public bool IsBroken { get; init; }

    /// <summary>A line with nothing on it but blanks or a comment.</summary>
    public sealed record Empty : Statement;

    /// <summary>A line that begins no statement.</summary>
    public sealed record Unknown : Statement;

    /// <summary><c>planting "…"</c>.</summary>
    public sealed record Planting(TextSyntax? Name) : Statement;

    /// <summary><c>habit WORD</c>.</summary>
    public sealed record Habit(NameSyntax? Value) : Statement;

    /// <summary><c>species NAME</c>.</summary>
    public sealed record Species(NameSyntax? Name) : Statement;

    /// <summary><c>container …</c>: dimensions in the order written (the last is the depth), or the corners of a slab and its depth.</summary>
    public sealed record Container(NameSyntax? Shape, ImmutableArray<QuantitySyntax> Dimensions, ImmutableArray<PlanPointSyntax> Corners, QuantitySyntax? Depth) : Statement;

    /// <summary><c>site …</c>.</summary>
    public sealed record Site(ImmutableArray<Clause> Clauses) : Statement;

    /// <summary><c>viewed …</c>.</summary>
    public sealed record Viewed(ImmutableArray<Clause> Clauses) : Statement;

    /// <summary><c>concept "…"</c>.</summary>
    public sealed record Concept(TextSyntax? Text) : Statement;

    /// <summary><c>use "…"</c>.</summary>
    public sealed record Use(TextSyntax? Path) : Statement;

    /// <summary><c>trunk NAME …</c>.</summary>
    public sealed record Trunk(NameSyntax? Name, ImmutableArray<Clause> Clauses) : Statement;

    /// <summary><c>tape A to B Q</c>, or <c>tape A to B Q between bark</c>.</summary>
    public sealed record Tape(NameSyntax? From, NameSyntax? To, QuantitySyntax? Distance, bool IsBetweenBark) : Statement;

    /// <summary><c>role NAME { … }</c>.</summary>
    public sealed record Role(NameSyntax? Name, ImmutableArray<Clause> Clauses) : Statement;

    /// <summary><c>task ID KIND …</c>.</summary>
    public sealed record Task(NameSyntax? Name, NameSyntax? Kind, TextSyntax? OtherKind, TargetSyntax? Target, ImmutableArray<Clause> Clauses) : Statement;

    /// <summary><c>seen STAGE DATE</c>.</summary>
    public sealed record Seen(NameSyntax? Stage, MomentSyntax.Date? Date) : Statement;

    /// <summary><c>measured DATE { … }</c>.</summary>
    public sealed record Measured(MomentSyntax.Date? Date, ImmutableArray<ReadingSyntax> Readings) : Statement;

    /// <summary><c>tolerance CHECK Q</c>.</summary>
    public sealed record Tolerance(NameSyntax? Check, QuantitySyntax? Limit) : Statement;

    /// <summary><c>accept CHECK TRUNKS because "…"</c>.</summary>
    public sealed record Accept(NameSyntax? Check, ImmutableArray<NameSyntax> Trunks, TextSyntax? Reason) : Statement;

    /// <summary><c>mute CHECK because "…"</c>.</summary>
    public sealed record Mute(NameSyntax? Check, TextSyntax? Reason) : Statement;

    /// <summary><c>profile NAME { … }</c>.</summary>
    public sealed record Profile(NameSyntax? Name, ImmutableArray<ProfileEntrySyntax> Entries) : Statement;
}
