using System.Collections.Immutable;

namespace GroveSpec.Checks;

/// <summary>Every check there is. A name, its limit, its explanation and its source stand here and nowhere else.</summary>
public static class Catalogue
{
    /// <summary>The checks that look at a planting, as code, in the order of <see cref="All"/>.</summary>
    internal static ImmutableArray<IRule> Rules { get; } = [.. RuleList.All, .. CareRules.All, .. FileRules.All];

    /// <summary>Every check, those of composition first, then those of care, in the order in which findings of equal severity are told.</summary>
    public static ImmutableArray<CheckDescription> All { get; } = [.. Rules.Select(rule => rule.Description), .. FileChecks.All, .. FileDescriptions.All];

    /// <summary>The check of a name.</summary>
    /// <param name="name">The name as files write it.</param>
    /// <returns>Its description, or null where there is no such check.</returns>
    public static CheckDescription? Find(string name)
    {
        foreach (var description in All)
        {
            if (description.Name == name)
            {
                return description;
            }
        }

        return null;
    }
}
