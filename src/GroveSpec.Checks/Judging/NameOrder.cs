using GroveSpec.Model.States;

namespace GroveSpec.Checks.Judging;

/// <summary>Puts the trunks of a planting in the order of their names, in which every rule looks at them: of equals the first by name comes first, and the order of a file's lines decides nothing.</summary>
internal static class NameOrder
{
    /// <summary>The same planting with its trunks in the order of their names, by UTF-16 unit.</summary>
    /// <param name="state">The planting on a day.</param>
    /// <returns>The sorted state; the very same where the file has them in that order already.</returns>
    public static PlantingState Of(PlantingState state)
    {
        var trunks = state.Trunks;
        for (var index = 1; index < trunks.Length; index++)
        {
            if (string.CompareOrdinal(trunks[index - 1].Name, trunks[index].Name) > 0)
            {
                return state with { Trunks = [.. Sorted([.. trunks])] };
            }
        }

        return state;
    }

    private static TrunkState[] Sorted(TrunkState[] trunks)
    {
        // Whole numbers sort much faster than names, and the first four units of most names tell them apart or nearly so.
        var beginnings = new ulong[trunks.Length];
        for (var index = 0; index < trunks.Length; index++)
        {
            beginnings[index] = Beginning(trunks[index].Name);
        }

        Array.Sort(beginnings, trunks);
        for (int start = 0, end; start < trunks.Length; start = end)
        {
            end = start + 1;
            while (end < trunks.Length && beginnings[end] == beginnings[start])
            {
                end++;
            }

            Array.Sort(trunks, start, end - start, ByName);
        }

        return trunks;
    }

    private static readonly Comparer<TrunkState> ByName = Comparer<TrunkState>.Create((left, right) => string.CompareOrdinal(left.Name, right.Name));

    private static ulong Beginning(string name)
    {
        var beginning = 0UL;
        for (var index = 0; index < 4; index++)
        {
            beginning = (beginning << 16) | (index < name.Length ? name[index] : 0U);
        }

        return beginning;
    }
}
