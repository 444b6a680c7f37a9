namespace GroveSpec.Craft.Choice;

/// <summary>Adds up the least few of the values it is told.</summary>
/// <param name="number">How many; of fewer values all are added up.</param>
/// <param name="least">Room for as many.</param>
internal ref struct LeastSum(int number, Span<double> least)
{
    private readonly Span<double> least = least;
    private int found;

    /// <summary>The sum of the least of the values so far.</summary>
    public readonly double Sum
    {
        get
        {
            var sum = 0.0;
            foreach (var value in least[..found])
            {
                sum += value;
            }

            return sum;
        }
    }

    /// <summary>Takes in a value.</summary>
    /// <param name="value">The value.</param>
    public void Add(double value)
    {
        if (found == number && (number == 0 || value >= least[found - 1]))
        {
            return;
        }

        // Straight into its place among those found, since they are few.
        var slot = found < number ? found++ : found - 1;
        for (; slot > 0 && least[slot - 1] > value; slot--)
        {
            least[slot] = least[slot - 1];
        }

        least[slot] = value;
    }
}
