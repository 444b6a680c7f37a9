using System.Collections.Immutable;
using GroveSpec.Model;

namespace GroveSpec.Checks.Rules;

/// <summary>What is not said of the whole planting and taken as usual; told once for all of it.</summary>
internal sealed class DefaultTaken : IRule
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } = new()
    {
        Name = "default-taken",
        Severity = Severity.Hint,
        Meaning = "Something about the whole planting is not said, and the usual is taken.",
        Explanation = "The checks and the drawings go by what is taken. Say it in the file if it differs, or to make plain that it is meant.",
        Source = "the language",
    };

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(CheckContext context, double limit)
    {
        var planting = context.Planting;
        if (planting.Trunks.IsEmpty)
        {
            return [];
        }

        var words = new List<string>();
        var taken = new List<string>();
        var written = new List<string>();
        if (planting.Habit is null)
        {
            words.Add("habit");
            taken.Add("separate trees (group)");
            written.Add("habit group");
        }

        if (planting.Container is null)
        {
            words.Add("container");
            taken.Add("open ground without a rim");
        }

        if (planting.Viewed is null)
        {
            words.Add("viewed");
            taken.Add("a viewer at the front (180 deg)");
            written.Add("viewed from 180 deg");
        }

        return words.Count == 0
            ? []
            :
            [
                new Finding
                {
                    Check = Description,
                    Severity = Description.Severity,
                    Place = context.Origins.Locate(planting.Name?.Origin ?? Origin.Default),
                    Message = $"Nothing is said with {Wording.List(words)}, so this is taken: {Wording.List(taken)}.",
                    Remedies = Remedies(context, written),
                },
            ];
    }

    /// <summary>Open ground has no statement of its own, so only the others can be written down.</summary>
    private static ImmutableArray<Remedy> Remedies(CheckContext context, List<string> written) => written.Count > 0 && context.Planting.Name is { } name
        ? [new Remedy("write down what is taken", [context.Origins.WriteBehind(name.Origin, [.. written])])]
        : [];
}
