using GroveSpec.Model.Judgement;

namespace GroveSpec.Checks.Judging;

/// <summary>The accept statements of a planting, and which of them still let something stand.</summary>
internal sealed class Acceptances
{
    private readonly CheckContext context;
    private readonly Dictionary<string, List<AcceptedFinding>> statements = new(StringComparer.Ordinal);
    private readonly HashSet<AcceptedFinding> used = new(ReferenceEqualityComparer.Instance);

    /// <summary>Reads the accept statements of a planting.</summary>
    /// <param name="context">The planting.</param>
    public Acceptances(CheckContext context)
    {
        this.context = context;
        foreach (var accepted in context.Planting.Accepted)
        {
            var key = Key(accepted.Check, accepted.Trunks);
            if (!statements.TryGetValue(key, out var list))
            {
                statements.Add(key, list = []);
            }

            list.Add(accepted);
        }
    }

    /// <summary>Divides findings into those that stand and those that are accepted: same check, same set of trunks.</summary>
    /// <param name="findings">All findings.</param>
    /// <returns>Both, each in the order given.</returns>
    public (List<Finding> Standing, List<Finding> Accepted) Divide(List<Finding> findings)
    {
        var standing = new List<Finding>(findings.Count);
        var accepted = new List<Finding>();
        foreach (var finding in findings)
        {
            if (statements.Count > 0 && statements.TryGetValue(Key(finding.Check.Name, finding.Trunks), out var list))
            {
                used.UnionWith(list);
                accepted.Add(finding);
            }
            else
            {
                standing.Add(finding);
            }
        }

        return (standing, accepted);
    }

    /// <summary>A hint for each statement that lets nothing stand. To be asked after <see cref="Divide"/>.</summary>
    /// <param name="muted">The checks that the file turns off.</param>
    /// <returns>The hints; none for an unknown check, whose name is a finding of its own, nor for a muted one.</returns>
    public IEnumerable<Finding> Stale(HashSet<string> muted) => context.Planting.Accepted
        .Where(accepted => !used.Contains(accepted)
            && Catalogue.Find(accepted.Check) is not null
            && !muted.Contains(accepted.Check))
        .Select(accepted => new Finding
        {
            Check = FileChecks.StaleAccept,
            Severity = FileChecks.StaleAccept.Severity,
            Place = context.Origins.Locate(accepted.Origin),
            Message = accepted.Trunks.IsEmpty
                ? $"Nothing of the kind {accepted.Check} is found any more: take this acceptance out."
                : $"{accepted.Check} is no longer found for {Wording.List(accepted.Trunks)}: take this acceptance out.",
            Trunks = [.. accepted.Trunks.Order(StringComparer.Ordinal)],
            Remedies = [new Remedy("take this acceptance out", [new Syntax.Text.TextEdit(context.Origins.StatementOf(accepted.Origin), "")])],
        });

    /// <summary>The keys of the accept statements for a check.</summary>
    /// <param name="context">The planting.</param>
    /// <param name="check">The check.</param>
    /// <returns>The keys.</returns>
    public static HashSet<string> KeysOf(CheckContext context, CheckDescription check)
    {
        var keys = new HashSet<string>(StringComparer.Ordinal);
        foreach (var accepted in context.Planting.Accepted)
        {
            if (accepted.Check == check.Name)
            {
                keys.Add(Key(check.Name, accepted.Trunks));
            }
        }

        return keys;
    }

    /// <summary>What an accept statement and a finding have in common: the check and the set of trunks.</summary>
    /// <param name="check">The check's name.</param>
    /// <param name="trunks">The trunks, in any order.</param>
    /// <returns>The key.</returns>
    public static string Key(string check, IEnumerable<string> trunks) => check + '\n' + string.Join('\n', trunks.Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal));
}
