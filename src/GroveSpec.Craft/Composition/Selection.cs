namespace GroveSpec.Craft.Composition;

/// <summary>Finds the one of given rank without sorting the others (Hoare's selection, Communications of the ACM 4, 1961, algorithm 65, from memory).</summary>
internal static class Selection
{
    /// <summary>Puts what belongs at a rank there, with nothing larger before and nothing smaller behind it.</summary>
    /// <param name="order">Places in <paramref name="keys"/>; a part of it is put in another order.</param>
    /// <param name="keys">What is compared; none may be not a number.</param>
    /// <param name="start">Where the part begins.</param>
    /// <param name="end">Where the part ends, this one not included.</param>
    /// <param name="rank">The rank, within the part.</param>
    public static void Place(int[] order, double[] keys, int start, int end, int rank)
    {
        end--;
        while (start < end)
        {
            var pivot = keys[order[start + ((end + 1 - start) / 2)]];
            int low = start, high = end;

            // Stopping at equal values on both sides halves a run of equal ones too.
            while (low <= high)
            {
                while (keys[order[low]] < pivot)
                {
                    low++;
                }

                while (keys[order[high]] > pivot)
                {
                    high--;
                }

                if (low <= high)
                {
                    (order[low], order[high]) = (order[high], order[low]);
                    low++;
                    high--;
                }
            }

            if (rank <= high)
            {
                end = high;
            }
            else if (rank >= low)
            {
                start = low;
            }
            else
            {
                return;
            }
        }
    }
}
