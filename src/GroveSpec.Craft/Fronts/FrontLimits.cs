namespace GroveSpec.Craft.Fronts;

/// <summary>The limits at which something begins or ends to be found in a view.</summary>
/// <param name="EvenPercent">From which difference on two gaps are not even, in percent of the longer; null when nobody asks.</param>
/// <param name="LevelPercent">Up to which offset three tops are level, in percent of their line; null when nobody asks.</param>
/// <param name="HiddenPercent">From which share on a trunk is hidden, in percent of its width; null when nobody asks.</param>
/// <param name="CentredPercent">Up to which distance from the centre line a trunk is centred, in percent of the container's width.</param>
/// <param name="Centred">The number of the trunk that may be centred; null when nobody asks.</param>
/// <param name="IsDepthAsked">Whether it matters which trunk is how far off.</param>
public sealed record FrontLimits(double? EvenPercent, double? LevelPercent, double? HiddenPercent, double CentredPercent, int? Centred, bool IsDepthAsked);
