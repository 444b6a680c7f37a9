namespace GroveSpec.Craft.Containers;

/// <summary>The shortest distance to an ellipse about the origin.</summary>
internal static class EllipseDistance
{
    private const int MostSteps = 20;
    private const double LastDigits = 1e-15;

    /// <summary>
    /// The distance, positive inside. The foot of the perpendicular is found by Newton's steps and then bisection on the one root of
    /// (r₀z₀/(s+r₀))² + (z₁/(s+1))² = 1, after D. Eberly, "Distance from a Point to an Ellipse" (the equation from memory):
    /// it converges for every place, the centre and the axes included.
    /// </summary>
    /// <param name="halfWidth">Half the axis along x, above zero, in any unit.</param>
    /// <param name="halfBreadth">Half the axis along y, above zero, in the same unit.</param>
    /// <param name="px">The place along x.</param>
    /// <param name="py">The place along y.</param>
    /// <returns>The distance in the same unit.</returns>
    public static double Signed(double halfWidth, double halfBreadth, double px, double py)
    {
        var (long0, short1) = halfWidth >= halfBreadth ? (halfWidth, halfBreadth) : (halfBreadth, halfWidth);
        var (y0, y1) = halfWidth >= halfBreadth ? (Math.Abs(px), Math.Abs(py)) : (Math.Abs(py), Math.Abs(px));
        if (long0 == short1)
        {
            return long0 - Math.Sqrt((y0 * y0) + (y1 * y1));
        }

        var level = Square(y0 / long0) + Square(y1 / short1) - 1;
        var distance = Distance(long0, short1, y0, y1, level);
        return level > 0 ? -distance : distance;
    }

    private static double Distance(double e0, double e1, double y0, double y1, double level)
    {
        if (y1 == 0)
        {
            // On the long axis: near the centre the foot leaves the axis.
            var reach = ((e0 * e0) - (e1 * e1)) / e0;
            if (y0 < reach)
            {
                var x0 = e0 * y0 / reach;
                var share = x0 / e0;
                return Math.Sqrt(Square(x0 - y0) + Square(e1 * Math.Sqrt(1 - (share * share))));
            }

            return Math.Abs(y0 - e0);
        }

        if (y0 == 0)
        {
            return Math.Abs(y1 - e1);
        }

        if (level == 0)
        {
            return 0;
        }

        var ratio = Square(e0 / e1);
        var root = Root(ratio, y0 / e0, y1 / e1, level);
        var foot0 = ratio * y0 / (root + ratio);
        var foot1 = y1 / (root + 1);
        return Math.Sqrt(Square(foot0 - y0) + Square(foot1 - y1));
    }

    private static double Root(double ratio, double z0, double z1, double level)
    {
        var scaled = ratio * z0;
        double Value(double at) => Square(scaled / (at + ratio)) + Square(z1 / (at + 1)) - 1;
        var low = z1 - 1;
        var high = level < 0 ? 0 : Math.Sqrt((scaled * scaled) + (z1 * z1)) - 1;

        // The value falls and is bent upward, so Newton's steps from below come near the root and never beyond it but by rounding.
        for (var round = 0; round < MostSteps; round++)
        {
            double toLong = low + ratio, toShort = low + 1, one = Square(scaled / toLong), other = Square(z1 / toShort);
            var next = low + ((one + other - 1) / (2 * ((one / toLong) + (other / toShort))));
            if (!(next > low && next < high))
            {
                break;
            }

            low = next;
        }

        // What is left is a few of the last digits, unless the steps were too short.
        for (var width = Math.Max(1, Math.Abs(low)) * LastDigits; low + width < high; width *= 2)
        {
            if (Value(low + width) < 0)
            {
                high = low + width;
                break;
            }
        }

        for (var round = 0; round < 200; round++)
        {
            var middle = (low + high) / 2;
            if (middle == low || middle == high)
            {
                break;
            }

            var value = Value(middle);
            if (value > 0)
            {
                low = middle;
            }
            else if (value < 0)
            {
                high = middle;
            }
            else
            {
                return middle;
            }
        }

        return (low + high) / 2;
    }

    private static double Square(double value) => value * value;
}
