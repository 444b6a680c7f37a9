using GroveSpec.Checks.Judging;

namespace GroveSpec.Checks.Ground;

/// <summary>One check as it counts for the ground of a newcomer: which of its findings take no ground, since they are there already or the file lets them stand.</summary>
internal sealed class GroundCheck
{
    private readonly HashSet<ulong> allowed = [];

    /// <summary>Reads what a file says of a check.</summary>
    /// <param name="context">The planting.</param>
    /// <param name="limits">Its limits.</param>
    /// <param name="name">The check's name.</param>
    /// <param name="setOf">The trunks of some names as a set; null where one of them is none of the trunks.</param>
    public GroundCheck(CheckContext context, Limits limits, string name, Func<IEnumerable<string>, ulong?> setOf)
    {
        Description = Catalogue.Find(name)!;
        Limit = limits.For(Description);
        IsOn = !context.Planting.Muted.Any(muted => muted.Check == name);
        foreach (var accepted in context.Planting.Accepted.Where(accept => accept.Check == name))
        {
            if (setOf(accepted.Trunks) is { } trunks)
            {
                Allow(trunks);
            }
        }
    }

    /// <summary>The check.</summary>
    public CheckDescription Description { get; }

    /// <summary>Its limit for this file.</summary>
    public double Limit { get; }

    /// <summary>Whether the file does not mute it.</summary>
    public bool IsOn { get; }

    /// <summary>All sets of trunks of which a finding takes no ground, put together.</summary>
    public ulong AllowedTrunks { get; private set; }

    /// <summary>Lets a finding of some trunks take no ground.</summary>
    /// <param name="trunks">The trunks as a set.</param>
    public void Allow(ulong trunks)
    {
        allowed.Add(trunks);
        AllowedTrunks |= trunks;
    }

    /// <summary>Whether a finding takes ground.</summary>
    /// <param name="trunks">Its trunks as a set.</param>
    /// <returns>True when it is neither there already nor let stand.</returns>
    public bool Takes(ulong trunks) => (trunks & ~AllowedTrunks) != 0 || !allowed.Contains(trunks);
}
