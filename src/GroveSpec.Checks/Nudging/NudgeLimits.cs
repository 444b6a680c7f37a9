using GroveSpec.Checks.Choosing;
using GroveSpec.Checks.Judging;
using GroveSpec.Craft.Moving;

namespace GroveSpec.Checks.Nudging;

/// <summary>The checks of composition, as faults of a loose stand: their limits, their weights, and what the file mutes and accepts.</summary>
internal static class NudgeLimits
{
    /// <summary>The check that tells a fault.</summary>
    /// <param name="kind">The fault.</param>
    /// <returns>Its name.</returns>
    public static string NameOf(StandFaultKind kind) => kind switch
    {
        StandFaultKind.Touching => "touching",
        StandFaultKind.OffContainer => "off-container",
        StandFaultKind.NearRim => "near-rim",
        StandFaultKind.CentredMain => "centred-main",
        StandFaultKind.DepthReversed => "depth-reversed",
        StandFaultKind.HiddenTrunk => "hidden-trunk",
        StandFaultKind.EvenGaps => "even-gaps",
        StandFaultKind.TwinDiameters => "twin-diameters",
        StandFaultKind.TwinHeights => "twin-heights",
        StandFaultKind.ThreeInLine => "three-in-line",
        StandFaultKind.EvenGapsInView => "even-gaps-in-view",
        _ => "level-tops",
    };

    /// <summary>What holds for a planting.</summary>
    /// <param name="context">The planting.</param>
    /// <param name="margin">By which part of itself each limit is drawn closer, so that what is found free is free for the checks too; 0 for the very limits.</param>
    /// <param name="withSizes">Whether neighbours of one size count.</param>
    /// <returns>The limits.</returns>
    public static StandFaultLimits Of(CheckContext context, double margin, bool withSizes)
    {
        var limits = new Limits(context);
        var found = new StandFaultLimits();
        foreach (var kind in Enum.GetValues<StandFaultKind>())
        {
            var check = Catalogue.Find(NameOf(kind))!;
            var isOn = context.Planting.Muted.All(muted => muted.Check != check.Name) && (withSizes || kind is not (StandFaultKind.TwinDiameters or StandFaultKind.TwinHeights));
            var limit = kind switch
            {
                StandFaultKind.Touching => margin,
                StandFaultKind.HiddenTrunk or StandFaultKind.DepthReversed => limits.For(check) * (1 - margin),
                _ => limits.For(check) * (1 + margin),
            };
            found.Set(kind, isOn ? limit : null, ChoiceCheck.WeightOf(check.Severity));
            Accept(context, found, kind, check.Name);
        }

        return found;
    }

    private static void Accept(CheckContext context, StandFaultLimits limits, StandFaultKind kind, string check)
    {
        var names = context.Standing.Trunks.Select(trunk => trunk.Name).ToArray();
        foreach (var accepted in context.Planting.Accepted.Where(accepted => accepted.Check == check))
        {
            var trunks = 0UL;
            var isKnown = true;
            foreach (var name in accepted.Trunks)
            {
                var place = Array.IndexOf(names, name);
                isKnown &= place >= 0;
                trunks |= place >= 0 ? 1UL << place : 0;
            }

            if (isKnown)
            {
                limits.Accept(kind, trunks);
            }
        }
    }
}
