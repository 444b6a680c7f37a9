using GroveSpec.Model.Quantities;

namespace GroveSpec.Checks;

/// <summary>What a drawing can show of a finding. Closed.</summary>
public abstract record Figure
{
    private Figure()
    {
    }

    /// <summary>A straight line in the plan, drawn a little past both ends: the rod through three trunks.</summary>
    /// <param name="From">One end.</param>
    /// <param name="To">The other end.</param>
    public sealed record Rod(PlanPoint From, PlanPoint To) : Figure;

    /// <summary>A gap in the plan between two trunks, drawn as an arc beside the gap's own line.</summary>
    /// <param name="From">One trunk's name.</param>
    /// <param name="To">The other trunk's name.</param>
    public sealed record Gap(string From, string To) : Figure;

    /// <summary>A gap between two trunks as seen from the front.</summary>
    /// <param name="From">The trunk on the left.</param>
    /// <param name="To">The trunk on the right.</param>
    public sealed record GapInView(string From, string To) : Figure;

    /// <summary>A line over the tops of trunks as seen from the front.</summary>
    /// <param name="From">The trunk at one end.</param>
    /// <param name="To">The trunk at the other end.</param>
    public sealed record Tops(string From, string To) : Figure;

    /// <summary>A trunk itself, ringed.</summary>
    /// <param name="Name">Its name.</param>
    public sealed record Ring(string Name) : Figure;

    /// <summary>A piece of work, numbered in its row of the timeline.</summary>
    /// <param name="Task">The task's name.</param>
    public sealed record Work(string Task) : Figure;
}
