namespace GroveSpec.Craft.Moving;

/// <summary>Shifts one trunk alone, by whole steps, the nearest first.</summary>
/// <param name="tries">The stand.</param>
/// <param name="step">The step in millimetres.</param>
internal sealed class SingleShifts(ShiftTries tries, double step)
{
    private const int MostSteps = 120;

    /// <summary>Looks through all places within reach, until one trunk's shift leaves nothing amiss.</summary>
    /// <param name="most">How far it is worth to go, in millimetres.</param>
    /// <returns>The state; null where no single trunk mends all.</returns>
    public ShiftState? Find(double most)
    {
        var count = tries.Movables.Count;
        tries.Load(new ShiftState(count));
        var farthest = Math.Min(MostSteps, (int)Math.Floor((Math.Min(most, tries.Movables.Max(movable => movable.Farthest)) / step) + 1e-9));
        foreach (var (right, back) in StepsOut.Within(farthest))
        {
            tries.Rest();
            for (var place = 0; place < count; place++)
            {
                var way = tries.Movables[place].Rounded(right * step, back * step);
                if (way is (0, 0) || !tries.Movables[place].MayGo(way.Rightward, way.Backward))
                {
                    continue;
                }

                tries.Put(place, way.Rightward, way.Backward);
                if (tries.IsAtMost(place, 0))
                {
                    tries.Put(place, 0, 0);
                    var found = new ShiftState(count).With(place, way.Rightward, way.Backward);
                    found.Weight = 0;
                    return found;
                }

                tries.Put(place, 0, 0);
            }
        }

        return null;
    }
}
