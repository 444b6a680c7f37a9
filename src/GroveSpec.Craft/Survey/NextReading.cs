using System.Collections.Immutable;
using GroveSpec.Model.Quantities;

namespace GroveSpec.Craft.Survey;

/// <summary>The reading to take next.</summary>
/// <param name="From">From this trunk.</param>
/// <param name="To">To this one; for one that nothing was read to, to these three.</param>
/// <param name="Reason">What for.</param>
/// <param name="Before">Of one that narrows: half the long axis of the widest ellipse now; of one that tells sides, or whether two stand on the same one: how far its readings from both places differ; else null.</param>
/// <param name="After">Of one that narrows: half the long axis then; else null.</param>
public sealed record NextReading(string From, ImmutableArray<string> To, NextReadingReason Reason, Length? Before = null, Length? After = null);
