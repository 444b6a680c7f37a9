namespace GroveSpec.Checks;

/// <summary>One check as code: it asks Craft for a number and decides.</summary>
internal interface IRule
{
    /// <summary>What the catalogue says of it.</summary>
    CheckDescription Description { get; }

    /// <summary>Looks at a planting.</summary>
    /// <param name="context">What to look at.</param>
    /// <param name="limit">The limit that holds for this file, in the unit of the description's limit; 0 for a check without one.</param>
    /// <returns>Every finding, in no particular order; accepting, muting, ranking and counting come after.</returns>
    IEnumerable<Finding> Look(CheckContext context, double limit);
}
