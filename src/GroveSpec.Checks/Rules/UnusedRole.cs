namespace GroveSpec.Checks.Rules;

/// <summary>A role of the file that no trunk plays.</summary>
internal sealed class UnusedRole : IRule
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } = new()
    {
        Name = "unused-role",
        Severity = Severity.Hint,
        Meaning = "No trunk plays a role of this file.",
        Explanation = "A role without trunks has no effect. It may be left over, or the trunks may name another.",
        Source = "the language",
    };

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(CheckContext context, double limit)
    {
        // A file without trunks is one that others use.
        if (context.Planting.Trunks.IsEmpty)
        {
            yield break;
        }

        var played = new HashSet<string>(StringComparer.Ordinal);
        foreach (var trunk in context.Planting.Trunks)
        {
            if (trunk.Role is { } role)
            {
                played.Add(role.Value);
            }
        }

        foreach (var role in context.Planting.Roles)
        {
            if (!role.IsShared && !played.Contains(role.Name))
            {
                yield return new Finding
                {
                    Check = Description,
                    Severity = Description.Severity,
                    Place = context.Origins.Locate(role.Origin),
                    Message = $"No trunk plays the role {Wording.Name(role.Name)}: give it to one, or take it out.",
                    Remedies = [new Remedy("take the role out", [new Syntax.Text.TextEdit(context.Origins.StatementOf(role.Origin), "")])],
                };
            }
        }
    }
}
