namespace GroveSpec.Drawing.Front;

/// <summary>
/// Places for names in rows below the picture, each with a leader from its trunk. A leader drops to a common level, crosses
/// to its name's place and drops to its row. Names keep the order of their trunks, so slanting parts never cross; within
/// a group of as many names as there are rows the leftmost hangs lowest, so no leader runs through a name.
/// </summary>
internal static class NameRows
{
    /// <summary>The least distance between two leaders.</summary>
    public const double LeaderGap = 3.8;

    private const double NameGap = 9;
    private const double RowCost = 26;

    /// <summary>A name's place.</summary>
    /// <param name="Drop">Where its leader drops from the trunk.</param>
    /// <param name="Leader">Where its leader reaches its row.</param>
    /// <param name="Left">The left edge of its box.</param>
    /// <param name="Row">Its row, 0 the uppermost.</param>
    internal readonly record struct Place(double Drop, double Leader, double Left, int Row);

    /// <summary>Searches for the places.</summary>
    /// <param name="feet">Where the trunks stand, from left to right.</param>
    /// <param name="widths">The room each name takes.</param>
    /// <param name="left">The left end of the rows.</param>
    /// <param name="right">The right end of the rows; there must be room for any one name.</param>
    /// <returns>A place for each name, and how many rows there are.</returns>
    public static (Place[] Places, int Rows) Arrange(double[] feet, double[] widths, double left, double right)
    {
        var drops = Spread(feet, _ => LeaderGap, left, right);
        (double Cost, double[] Leaders, int Rows)? best = null;
        for (var rows = 1; rows <= Math.Max(1, feet.Length); rows++)
        {
            if (best is { } found && rows * RowCost > found.Cost)
            {
                break;
            }

            if (TryRows(drops, widths, rows, left, right) is { } leaders)
            {
                // A row more is worth it when leaders slant a good deal less.
                var slant = leaders.Select((place, index) => Math.Abs(place - drops[index])).DefaultIfEmpty(0).Average();
                var cost = (rows * RowCost) + slant;
                best = best is { } other && other.Cost <= cost ? best : (cost, leaders, rows);
            }
        }

        // Names that no number of rows can hold are not asked for: see the callers' shortening.
        var (_, chosen, count) = best ?? (0, drops, feet.Length);
        return ([.. chosen.Select((leader, index) => new Place(
            drops[index], leader, leader - Before(widths[index], count), RowOf(index, count)))], count);
    }

    /// <summary>The row of a name: the first of each group hangs lowest.</summary>
    private static int RowOf(int index, int rows) => rows - 1 - (index % rows);

    /// <summary>How much of a name's box lies left of its leader: half when there is one row; else it stands a little to the right.</summary>
    private static double Before(double width, int rows) => rows == 1 ? width / 2 : -3;

    private static double[]? TryRows(double[] drops, double[] widths, int rows, double left, double right)
    {
        var count = drops.Length;
        var (from, to) = (new double[count], new double[count]);
        for (var index = 0; index < count; index++)
        {
            from[index] = left + Before(widths[index], rows);
            to[index] = right - widths[index] + Before(widths[index], rows);
        }

        // Each place lies between what the names on its left leave and what those on its right leave: two answers, both fit,
        // and since the rules are differences, so does the middle between them.
        var (early, late) = (new double[count], new double[count]);
        for (var index = 0; index < count; index++)
        {
            early[index] = from[index];
            for (var other = Math.Max(0, index - (2 * rows)); other < index; other++)
            {
                early[index] = Math.Max(early[index], early[other] + Apart(other, index));
            }

            if (early[index] > to[index] + 1e-9)
            {
                return null;
            }
        }

        for (var index = count - 1; index >= 0; index--)
        {
            late[index] = to[index];
            for (var other = index + 1; other <= Math.Min(count - 1, index + (2 * rows)); other++)
            {
                late[index] = Math.Min(late[index], late[other] - Apart(index, other));
            }
        }

        var (leftward, rightward) = (new double[count], new double[count]);
        for (var index = 0; index < count; index++)
        {
            rightward[index] = Math.Clamp(drops[index], early[index], late[index]);
            for (var other = Math.Max(0, index - (2 * rows)); other < index; other++)
            {
                rightward[index] = Math.Max(rightward[index], rightward[other] + Apart(other, index));
            }
        }

        for (var index = count - 1; index >= 0; index--)
        {
            leftward[index] = Math.Clamp(drops[index], early[index], late[index]);
            for (var other = index + 1; other <= Math.Min(count - 1, index + (2 * rows)); other++)
            {
                leftward[index] = Math.Min(leftward[index], leftward[other] - Apart(index, other));
            }
        }

        return [.. rightward.Select((place, index) => (place + leftward[index]) / 2)];

        double Apart(int first, int second)
        {
            var (row, other) = (RowOf(first, rows), RowOf(second, rows));
            var (after, before) = (widths[first] - Before(widths[first], rows), Before(widths[second], rows));
            return row == other ? after + NameGap + before

                // The second's leader passes the first's row on its way down, or the second's name passes below the first's leader's end.
                : other > row ? after + LeaderGap
                : Math.Max(LeaderGap, before + LeaderGap);
        }
    }

    private static double[] Spread(double[] wanted, Func<int, double> apart, double left, double right)
    {
        var count = wanted.Length;
        var (forth, back) = (new double[count], new double[count]);
        for (var index = 0; index < count; index++)
        {
            forth[index] = index == 0 ? wanted[0] : Math.Max(wanted[index], forth[index - 1] + apart(index));
        }

        for (var index = count - 1; index >= 0; index--)
        {
            back[index] = index == count - 1 ? wanted[index] : Math.Min(wanted[index], back[index + 1] - apart(index + 1));
        }

        var spread = new double[count];
        for (var index = 0; index < count; index++)
        {
            var (least, most) = (left + (index * LeaderGap), right - ((count - 1 - index) * LeaderGap));
            spread[index] = most < least ? left + ((right - left) * (index + 0.5) / count) : Math.Clamp((forth[index] + back[index]) / 2, least, most);
        }

        return spread;
    }
}
