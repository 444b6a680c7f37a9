using System.Collections.Immutable;
using System.Globalization;
using GroveSpec.Binding;
using GroveSpec.Checks;
using GroveSpec.Model.States;
using GroveSpec.Syntax.Tree;

namespace GroveSpec.Editing.Notes;

/// <summary>Finds what is worth noting above lines: how the planting stands, and who plays a role.</summary>
public static class HeadNotes
{
    private const int MostNames = 8;

    /// <summary>The notes of a file.</summary>
    /// <param name="assessment">The file.</param>
    /// <returns>One above the line that names the planting, and one above each role; none above the roles of a file without trunks, which others play.</returns>
    public static ImmutableArray<LineNote> Of(Assessment assessment)
    {
        ArgumentNullException.ThrowIfNull(assessment);
        var notes = ImmutableArray.CreateBuilder<LineNote>();
        var isNamed = false;
        foreach (var statement in assessment.Tree.Statements)
        {
            switch (statement)
            {
                case Statement.Planting when !isNamed:
                    isNamed = true;
                    notes.Add(new(statement.Span, Standing(assessment), "How many trunks stand on the day that is shown, and what was found."));
                    break;
                case Statement.Role { Name: { } name } when !assessment.Planting.Trunks.IsEmpty:
                    notes.Add(new(statement.Span, Players(assessment, name.Text), "The trunks that play this role.", name.Span));
                    break;
                default:
                    break;
            }
        }

        return notes.ToImmutable();
    }

    private static string Standing(Assessment assessment)
    {
        var parts = new List<string> { Count(assessment.State.Trunks.Count(trunk => trunk.Presence == Presence.Standing), "trunk stands", "trunks stand") };
        Add(Severity.Error, "error", "errors");
        Add(Severity.Warning, "warning", "warnings");
        Add(Severity.Hint, "hint", "hints");
        if (parts.Count == 1)
        {
            parts.Add("nothing was found");
        }

        return string.Join(" · ", parts);

        void Add(Severity severity, string one, string many)
        {
            var count = assessment.Findings.Where(finding => finding.Severity == severity).Sum(finding => 1 + finding.Untold);
            if (count > 0)
            {
                parts.Add(Count(count, one, many));
            }
        }
    }

    private static string Players(Assessment assessment, string role)
    {
        var players = assessment.Planting.Trunks.Where(trunk => trunk.Role?.Value == role).Select(trunk => trunk.Name).ToList();
        return players.Count == 0 ? "no trunk"
            : $"{Count(players.Count, "trunk", "trunks")}: {string.Join(", ", players.Take(MostNames))}{(players.Count > MostNames ? " …" : "")}";
    }

    private static string Count(int count, string one, string many) => string.Create(CultureInfo.InvariantCulture, $"{count:N0} {(count == 1 ? one : many)}");
}
