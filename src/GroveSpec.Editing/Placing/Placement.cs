using System.Collections.Immutable;
using GroveSpec.Model.Quantities;
using GroveSpec.Syntax.Text;

namespace GroveSpec.Editing.Placing;

/// <summary>What comes of moving a trunk, or the days of a task, by hand.</summary>
/// <param name="Edits">The edits that state it; none where it is refused or nothing changes.</param>
/// <param name="Says">What comes of it, in a sentence; or why it is not moved.</param>
/// <param name="IsRefused">Whether it is not moved.</param>
/// <param name="Reached">Where a trunk's foot, or the top that was moved, comes to be; nothing for a task.</param>
public sealed record Placement(ImmutableArray<TextEdit> Edits, string Says, bool IsRefused, SpacePoint Reached)
{
    /// <summary>A refusal.</summary>
    /// <param name="why">Why, in a sentence.</param>
    /// <returns>It.</returns>
    internal static Placement Refuse(string why) => new([], why, IsRefused: true, default);
}
