using GroveSpec.Model.Quantities;

namespace GroveSpec.Craft.Survey;

/// <summary>Finds a place by its distances from known ones.</summary>
internal static class Trilateration
{
    /// <summary>Marks nearer to one line than this share of their extent leave a place and its mirror image.</summary>
    private const double FlatShare = 1e-3;

    /// <summary>So many marks give starts; all marks take part in the fit.</summary>
    private const int MarksForStarts = 6;

    /// <summary>Up to so many readings are all asked from each start.</summary>
    private const int MarksForEachStart = 1_000;

    /// <summary>The place with the least sum of squared misfits, by damped Gauss–Newton steps from where pairs of circles meet.</summary>
    /// <param name="marks">The marks, in any order; several readings to one mark all count.</param>
    /// <returns>The place; null with fewer than three marks apart, or with all of them on one line.</returns>
    public static PlanPoint? Fit(List<Mark> marks)
    {
        var apart = marks.Select(mark => mark.Place).Distinct().OrderBy(place => place.X).ThenBy(place => place.Y).ToArray();
        if (apart.Length < 3 || IsFlat(apart))
        {
            return null;
        }

        // Sorted and about the first mark, so that neither order nor a far origin changes the last digit.
        marks.Sort((left, right) => left.Place.X != right.Place.X ? left.Place.X.CompareTo(right.Place.X)
            : left.Place.Y != right.Place.Y ? left.Place.Y.CompareTo(right.Place.Y)
            : left.Millimetres.CompareTo(right.Millimetres));
        var origin = marks[0].Place;
        var local = marks.Select(mark => ((mark.Place.X - origin.X).Millimetres, (mark.Place.Y - origin.Y).Millimetres, mark.Millimetres)).ToArray();

        // Of very many readings every so-manieth tells which start leads to the place; from there all of them count.
        var every = ((local.Length - 1) / MarksForEachStart) + 1;
        var some = local.Where((_, index) => index % every == 0).ToArray();
        if (IsFlat([.. some.Select(mark => PlanPoint.FromMillimetres(mark.Item1, mark.Item2))]))
        {
            some = local;
        }

        var best = (X: 0.0, Y: 0.0, Misfit: double.MaxValue);
        foreach (var (x, y) in Starts(local))
        {
            var fitted = Descend(some, x, y);
            best = fitted.Misfit < best.Misfit ? fitted : best;
        }

        best = some.Length < local.Length ? Descend(local, best.X, best.Y) : best;

        // The sum of three lengths of the language stays far inside what a length holds, but a start may run away.
        return double.IsFinite(best.X) && double.IsFinite(best.Y) && Math.Abs(best.X) < 1e9 && Math.Abs(best.Y) < 1e9
            ? new PlanPoint(origin.X + Length.FromMillimetres(best.X), origin.Y + Length.FromMillimetres(best.Y))
            : null;
    }

    private static bool IsFlat(PlanPoint[] places)
    {
        // From the first place, the farthest other gives the line; the farthest from that line gives the height over it.
        double far = 0, ux = 0, uy = 0, high = 0;
        foreach (var place in places)
        {
            double x = (place.X - places[0].X).Millimetres, y = (place.Y - places[0].Y).Millimetres;
            if ((x * x) + (y * y) > far)
            {
                (far, ux, uy) = ((x * x) + (y * y), x, y);
            }
        }

        foreach (var place in places)
        {
            double x = (place.X - places[0].X).Millimetres, y = (place.Y - places[0].Y).Millimetres;
            high = Math.Max(high, Math.Abs((ux * y) - (uy * x)));
        }

        return high <= FlatShare * far;
    }

    private static IEnumerable<(double X, double Y)> Starts((double X, double Y, double Distance)[] marks)
    {
        var step = Math.Max(1, marks.Length / MarksForStarts);
        for (var first = 0; first < marks.Length; first += step)
        {
            for (var second = first + step; second < marks.Length; second += step)
            {
                double ux = marks[second].X - marks[first].X, uy = marks[second].Y - marks[first].Y;
                var apart = Math.Sqrt((ux * ux) + (uy * uy));
                if (apart == 0)
                {
                    continue;
                }

                // Where the circles do not meet, the place between or beyond them on the line of centres.
                double near = marks[first].Distance, far = marks[second].Distance;
                var along = ((apart * apart) + (near * near) - (far * far)) / (2 * apart);
                var aside = Math.Sqrt(Math.Max(0, (near * near) - (along * along)));
                double footX = marks[first].X + (along * ux / apart), footY = marks[first].Y + (along * uy / apart);
                yield return (footX - (aside * uy / apart), footY + (aside * ux / apart));
                yield return (footX + (aside * uy / apart), footY - (aside * ux / apart));
            }
        }
    }

    private static (double X, double Y, double Misfit) Descend((double X, double Y, double Distance)[] marks, double x, double y)
    {
        var misfit = Misfit(marks, x, y);
        var damping = 1e-3;
        for (var round = 0; round < 100 && damping < 1e12; round++)
        {
            double xx = 0, xy = 0, yy = 0, gx = 0, gy = 0;
            foreach (var mark in marks)
            {
                double dx = x - mark.X, dy = y - mark.Y;
                var distance = Math.Sqrt((dx * dx) + (dy * dy));
                if (distance == 0)
                {
                    continue;
                }

                dx /= distance;
                dy /= distance;
                xx += dx * dx;
                xy += dx * dy;
                yy += dy * dy;
                gx += dx * (distance - mark.Distance);
                gy += dy * (distance - mark.Distance);
            }

            double a = xx + damping, b = yy + damping;
            var determinant = (a * b) - (xy * xy);
            var (stepX, stepY) = (((b * gx) - (xy * gy)) / determinant, ((a * gy) - (xy * gx)) / determinant);
            var after = Misfit(marks, x - stepX, y - stepY);
            if (after < misfit)
            {
                (x, y, misfit, damping) = (x - stepX, y - stepY, after, damping / 10);
                continue;
            }

            if (Math.Abs(stepX) + Math.Abs(stepY) < 1e-9)
            {
                break;
            }

            damping = Math.Max(damping * 10, 1e-6);
        }

        return (x, y, misfit);
    }

    private static double Misfit((double X, double Y, double Distance)[] marks, double x, double y)
    {
        var sum = 0.0;
        foreach (var mark in marks)
        {
            double dx = x - mark.X, dy = y - mark.Y;
            var misfit = Math.Sqrt((dx * dx) + (dy * dy)) - mark.Distance;
            sum += misfit * misfit;
        }

        return sum;
    }
}
