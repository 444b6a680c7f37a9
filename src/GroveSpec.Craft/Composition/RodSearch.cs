using System.Collections.Immutable;

namespace GroveSpec.Craft.Composition;

/// <summary>Finds the triples of trunks through which one straight rod could pass.</summary>
public static class RodSearch
{
    /// <summary>
    /// All triples within a limit. Under seven trunks every triple is looked at; from seven on only those in which the
    /// middle trunk is a neighbour of both others. Trunks without a known diameter are left out, and so are triples of
    /// which two trunks stand at the very same place, since any line through that place meets both.
    /// </summary>
    /// <param name="trunks">The trunks.</param>
    /// <param name="limit">The largest closeness that counts, a bare ratio.</param>
    /// <returns>For each the middle trunk and the two at the ends, as places in <see cref="StandingTrunks.Trunks"/>, with the closeness; in the order of the middle trunks.</returns>
    public static ImmutableArray<(int End, int Middle, int OtherEnd, double Closeness)> Find(StandingTrunks trunks, double limit)
    {
        var found = ImmutableArray.CreateBuilder<(int, int, int, double)>();
        for (var middle = 0; middle < trunks.Count; middle++)
        {
            if (trunks.Count >= StandingTrunks.ReachMattersFrom)
            {
                var near = trunks.NeighboursOf(middle);
                for (var first = 0; first < near.Length; first++)
                {
                    for (var second = first + 1; second < near.Length; second++)
                    {
                        Look(trunks, middle, Math.Min(near[first], near[second]), Math.Max(near[first], near[second]), limit, found);
                    }
                }

                continue;
            }

            LookThroughAll(trunks, middle, limit, found);
        }

        return found.DrainToImmutable();
    }

    /// <summary>All triples within a limit as if no more than six trunks stood, whether or not they are neighbours.</summary>
    internal static ImmutableArray<(int End, int Middle, int OtherEnd, double Closeness)> OfAll(StandingTrunks trunks, double limit)
    {
        var found = ImmutableArray.CreateBuilder<(int, int, int, double)>();
        for (var middle = 0; middle < trunks.Count; middle++)
        {
            LookThroughAll(trunks, middle, limit, found);
        }

        return found.DrainToImmutable();
    }

    private static void LookThroughAll(StandingTrunks trunks, int middle, double limit, ImmutableArray<(int, int, int, double)>.Builder found)
    {
        for (var first = 0; first < trunks.Count; first++)
        {
            for (var second = first + 1; second < trunks.Count; second++)
            {
                if (first != middle && second != middle)
                {
                    Look(trunks, middle, first, second, limit, found);
                }
            }
        }
    }

    private static void Look(StandingTrunks trunks, int middle, int first, int second, double limit, ImmutableArray<(int, int, int, double)>.Builder found)
    {
        if (!MayPass(trunks, middle, first, second, limit))
        {
            return;
        }

        var sections = trunks.Sections;
        TrunkSection m = sections[middle], a = sections[first], b = sections[second];
        if (m.Diameter.Nanometres == 0 || a.Diameter.Nanometres == 0 || b.Diameter.Nanometres == 0 || !IsMiddle(middle, first, second, sections.AsSpan()))
        {
            return;
        }

        if (Rod.Passes(a, m, b, limit))
        {
            found.Add((first, middle, second, Rod.Closeness(a, m, b)));
        }
    }

    /// <summary>
    /// Leaves out at once most of those that pass no rod, or have another middle: the same as below, in numbers of 53 bits,
    /// with more than their error allowed for.
    /// </summary>
    private static bool MayPass(StandingTrunks trunks, int middle, int first, int second, double limit)
    {
        const double Allowed = 1e-9;
        ReadOnlySpan<double> x = trunks.XInNanometres, y = trunks.YInNanometres;
        double toFirstX = x[first] - x[middle], toFirstY = y[first] - y[middle], toSecondX = x[second] - x[middle], toSecondY = y[second] - y[middle];
        double acrossX = x[second] - x[first], acrossY = y[second] - y[first];
        double left = (toFirstX * toFirstX) + (toFirstY * toFirstY), right = (toSecondX * toSecondX) + (toSecondY * toSecondY);
        var across = (acrossX * acrossX) + (acrossY * acrossY);
        if (across < Math.Max(left, right) * (1 - Allowed))
        {
            return false;
        }

        // The most that the weight of Rod can be: every difference of diameters against the whole sum, along the longest side.
        var sections = trunks.Sections;
        double longest = Math.Max(sections[middle].Diameter.Nanometres, Math.Max(sections[first].Diameter.Nanometres, sections[second].Diameter.Nanometres));
        double one = toFirstX * toSecondY, other = toFirstY * toSecondX;
        var most = 3 * longest * Math.Sqrt(Math.Max(across, Math.Max(left, right))) * limit;
        return 2 * Math.Abs(one - other) <= (most * (1 + Allowed)) + (Allowed * (Math.Abs(one) + Math.Abs(other)));
    }

    /// <summary>Whether it stands across from the longest side; of equal sides the trunk that comes first in the stand is the middle.</summary>
    internal static bool IsMiddle(int middle, int first, int second, ReadOnlySpan<TrunkSection> sections)
    {
        Int128 across = Rod.Square(sections[first].Centre, sections[second].Centre);
        Int128 left = Rod.Square(sections[first].Centre, sections[middle].Centre);
        Int128 right = Rod.Square(sections[second].Centre, sections[middle].Centre);
        return left != 0 && right != 0
            && (across > right || (across == right && middle < first))
            && (across > left || (across == left && middle < second));
    }
}
