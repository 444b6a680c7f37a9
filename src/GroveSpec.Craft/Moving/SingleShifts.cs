namespace GroveSpec.Craft.Moving;

/// <summary>Shifts one trunk alone, by whole steps, the nearest first.</summary>
/// <param name="tries">The stand.</param>
/// <param name="step">The step in millimetres.</param>
internal sealed class SingleShifts(ShiftTries tries, double step)
{
    private const int MostSteps = 120;

    /// <summary>Looks through all places within reach of one trunk, until its shift leaves nothing amiss.</summary>
    /// <param name="place">Which movable.</param>
    /// <param name="most">How far it is worth to go, in millimetres.</param>
    /// <returns>The state; null where the trunk alone does not mend all.</returns>
    public ShiftState? Find(int place, double most)
    {
        var (movable, nowhere) = (tries.Movables[place], new ShiftState(tries.Movables.Count));
        tries.Load(nowhere);
        var farthest = Math.Min(MostSteps, (int)Math.Floor((Math.Min(most, movable.Farthest) / step) + 1e-9));
        foreach (var (right, back) in StepsOut.Within(farthest))
        {
            tries.Rest();
            var way = movable.Rounded(right * step, back * step);
            if (way is (0, 0) || !movable.MayGo(way.Rightward, way.Backward))
            {
                continue;
            }

            tries.Put(place, way.Rightward, way.Backward);
            if (tries.IsAtMost(place, 0))
            {
                var found = nowhere.With(place, way.Rightward, way.Backward);
                found.Weight = 0;
                return found;
            }
        }

        return null;
    }
}
