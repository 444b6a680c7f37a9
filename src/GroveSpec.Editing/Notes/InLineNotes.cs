using System.Collections.Immutable;
using GroveSpec.Binding;
using GroveSpec.Checks;
using GroveSpec.Craft.Composition;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.States;
using GroveSpec.Syntax.Text;
using GroveSpec.Syntax.Tree;

namespace GroveSpec.Editing.Notes;

/// <summary>Finds what is worth noting within lines: the diameter that a girth gives, and how near the next trunk stands.</summary>
public static class InLineNotes
{
    /// <summary>The notes of a run of text.</summary>
    /// <param name="assessment">The file.</param>
    /// <param name="within">The run.</param>
    /// <returns>The notes in the order of the text.</returns>
    public static ImmutableArray<LineNote> Of(Assessment assessment, TextSpan within)
    {
        ArgumentNullException.ThrowIfNull(assessment);
        var notes = ImmutableArray.CreateBuilder<LineNote>();
        var byName = new Dictionary<string, TrunkState>(StringComparer.Ordinal);
        foreach (var trunk in assessment.State.Trunks)
        {
            byName.TryAdd(trunk.Name, trunk);
        }

        var gaps = new Lazy<Dictionary<string, (string Other, Length Gap)>>(() => NearestGaps(assessment.State));
        foreach (var statement in assessment.Tree.Statements)
        {
            if (statement is not Statement.Trunk { Name: { } name } trunk || statement.Span.End < within.Start || statement.Span.Start > within.End || !byName.TryGetValue(name.Text, out var state))
            {
                continue;
            }

            if (trunk.Clauses.OfType<Clause.Thickness>().FirstOrDefault() is { IsGirth: true } girth && state.Trunk.Diameter is { } diameter)
            {
                var said = LengthWording.Say(diameter.Value, assessment.Units);
                notes.Add(new(girth.Span, $"⌀ {said}", $"A girth is π times the diameter: this one gives a diameter of {said}."));
            }

            // Behind the line, so that the columns stay in line.
            if (gaps.Value.TryGetValue(name.Text, out var near))
            {
                var said = LengthWording.Say(near.Gap, assessment.Units);
                notes.Add(new(statement.Span, $"{said} to {near.Other}", $"{near.Other} is the nearest trunk: {said} from centre to centre."));
            }
        }

        notes.Sort(static (left, right) => left.Span.End.CompareTo(right.Span.End));
        return notes.ToImmutable();
    }

    private static Dictionary<string, (string Other, Length Gap)> NearestGaps(PlantingState state)
    {
        var gaps = new Dictionary<string, (string, Length)>(StringComparer.Ordinal);
        if (!Checker.IsJudged(state))
        {
            return gaps;
        }

        var standing = StandingTrunks.Of(state);
        Span<int> found = stackalloc int[1];
        for (var index = 0; index < standing.Count; index++)
        {
            if (standing.Near(index, Length.Largest, found) == 1)
            {
                gaps.TryAdd(standing.Trunks[index].Name, (standing.Trunks[found[0]].Name, standing.Sections[index].Centre.DistanceTo(standing.Sections[found[0]].Centre)));
            }
        }

        return gaps;
    }
}
