using System.Collections.Immutable;
using GroveSpec.Checks;
using GroveSpec.Syntax.Text;

namespace GroveSpec.Editing.Fixing;

/// <summary>One way to be rid of a finding, as it is offered.</summary>
/// <param name="Title">What it does.</param>
/// <param name="Finding">The finding it clears.</param>
/// <param name="Edits">The edits that do it, none overlapping.</param>
/// <param name="IsBest">Whether it is the one to take without thinking: the spelling of a word, the unit of a number.</param>
public sealed record Fix(string Title, Finding Finding, ImmutableArray<TextEdit> Edits, bool IsBest);
