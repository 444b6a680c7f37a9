namespace GroveSpec.Syntax.Tree;

/// <summary>A point or band of time as written. Closed. Whether a date exists is for the binder to tell.</summary>
public abstract record MomentSyntax : SyntaxNode
{
    private MomentSyntax()
    {
    }

    /// <summary><c>2027</c>, <c>2027-04</c> or <c>2027-04-22</c>, as written.</summary>
    /// <param name="Text">The digits and dashes.</param>
    public sealed record Date(string Text) : MomentSyntax;

    /// <summary><c>late autumn 2026</c>.</summary>
    /// <param name="Part">early, mid or late; null for the whole.</param>
    /// <param name="Name">spring, summer, autumn or winter.</param>
    /// <param name="Year">The year's digits.</param>
    public sealed record Season(NameSyntax? Part, NameSyntax Name, NameSyntax Year) : MomentSyntax;

    /// <summary><c>leaf-out 2027</c>.</summary>
    /// <param name="Name">The stage.</param>
    /// <param name="Year">The year's digits; null when left out.</param>
    public sealed record Stage(NameSyntax Name, NameSyntax? Year) : MomentSyntax;

    /// <summary>Another task, by name.</summary>
    /// <param name="Name">The task's name.</param>
    public sealed record Task(NameSyntax Name) : MomentSyntax;
}
