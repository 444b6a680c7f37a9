using System.Runtime.Intrinsics;

namespace GroveSpec.Craft.Survey;

/// <summary>What least squares need of a symmetric matrix without negative directions, kept whole, row by row.</summary>
internal static class SymmetricMatrix
{
    // Normal matrices here are sums of squares of unit vectors, so that one number serves for all sizes of plantings.
    private const double Nothing = 1e-8;

    /// <summary>Solves A·x = b by Cholesky's factors.</summary>
    /// <param name="matrix">A, which is overwritten.</param>
    /// <param name="right">b, in whose place x is left.</param>
    /// <returns>False where A has a direction without weight; b is then spoilt.</returns>
    public static bool Solve(double[] matrix, double[] right)
    {
        var size = right.Length;
        if (!Factor(matrix, size))
        {
            return false;
        }

        for (var row = 0; row < size; row++)
        {
            right[row] = (right[row] - Product(matrix.AsSpan(row * size, row), right.AsSpan(0, row))) / matrix[(row * size) + row];
        }

        // Row by row as the factor lies in memory: what a row takes off those above it.
        for (var row = size - 1; row >= 0; row--)
        {
            right[row] /= matrix[(row * size) + row];
            for (var above = 0; above < row; above++)
            {
                right[above] -= matrix[(row * size) + above] * right[row];
            }
        }

        return true;
    }

    /// <summary>The inverse.</summary>
    /// <param name="matrix">The matrix, which stays.</param>
    /// <param name="size">How many rows it has.</param>
    /// <returns>The inverse, or null where there is a direction without weight.</returns>
    public static double[]? Inverse(double[] matrix, int size)
    {
        double[] factor = [.. matrix];
        if (!Factor(factor, size))
        {
            return null;
        }

        // The inverse of the factor, column by column, and from it that of the whole.
        var lower = new double[size * size];
        for (var column = 0; column < size; column++)
        {
            for (var row = column; row < size; row++)
            {
                var sum = row == column ? 1.0 : 0.0;
                for (var between = column; between < row; between++)
                {
                    sum -= factor[(row * size) + between] * lower[(between * size) + column];
                }

                lower[(row * size) + column] = sum / factor[(row * size) + row];
            }
        }

        var inverse = new double[size * size];
        for (var row = 0; row < size; row++)
        {
            for (var column = 0; column <= row; column++)
            {
                var sum = 0.0;
                for (var below = row; below < size; below++)
                {
                    sum += lower[(below * size) + row] * lower[(below * size) + column];
                }

                inverse[(row * size) + column] = inverse[(column * size) + row] = sum;
            }
        }

        return inverse;
    }

    /// <summary>The directions without weight, by Gauss and Jordan with the largest pivot each time.</summary>
    /// <param name="matrix">The matrix, which stays.</param>
    /// <param name="size">How many rows it has.</param>
    /// <returns>One vector for each such direction, and the column in which it alone is 1.</returns>
    public static List<(int Column, double[] Vector)> NullSpace(double[] matrix, int size)
    {
        double[] work = [.. matrix];
        var isUsed = new bool[size];
        for (var step = 0; step < size; step++)
        {
            var best = -1;
            for (var row = 0; row < size; row++)
            {
                // In such a matrix the largest of what is left stands on the diagonal.
                if (!isUsed[row] && (best < 0 || work[(row * size) + row] > work[(best * size) + best]))
                {
                    best = row;
                }
            }

            if (work[(best * size) + best] <= Nothing)
            {
                break;
            }

            isUsed[best] = true;
            Eliminate(work, size, best);
        }

        var vectors = new List<(int, double[])>();
        for (var column = 0; column < size; column++)
        {
            if (!isUsed[column])
            {
                var vector = new double[size];
                vector[column] = 1;
                for (var row = 0; row < size; row++)
                {
                    if (isUsed[row])
                    {
                        vector[row] = -work[(row * size) + column];
                    }
                }

                vectors.Add((column, vector));
            }
        }

        return vectors;
    }

    private static void Eliminate(double[] work, int size, int pivot)
    {
        var scale = work[(pivot * size) + pivot];
        for (var column = 0; column < size; column++)
        {
            work[(pivot * size) + column] /= scale;
        }

        for (var row = 0; row < size; row++)
        {
            var factor = work[(row * size) + pivot];
            if (row == pivot || factor == 0)
            {
                continue;
            }

            for (var column = 0; column < size; column++)
            {
                work[(row * size) + column] -= factor * work[(pivot * size) + column];
            }
        }
    }

    /// <summary>The sum of products, in an order that is the same on every machine.</summary>
    private static double Product(ReadOnlySpan<double> left, ReadOnlySpan<double> right)
    {
        var sums = Vector256<double>.Zero;
        var index = 0;
        for (; index + Vector256<double>.Count <= left.Length; index += Vector256<double>.Count)
        {
            sums += Vector256.Create(left.Slice(index, Vector256<double>.Count)) * Vector256.Create(right.Slice(index, Vector256<double>.Count));
        }

        var sum = (sums[0] + sums[1]) + (sums[2] + sums[3]);
        for (; index < left.Length; index++)
        {
            sum += left[index] * right[index];
        }

        return sum;
    }

    private static bool Factor(double[] matrix, int size)
    {
        for (var column = 0; column < size; column++)
        {
            for (var row = column; row < size; row++)
            {
                var sum = matrix[(row * size) + column] - Product(matrix.AsSpan(row * size, column), matrix.AsSpan(column * size, column));
                if (row == column)
                {
                    if (!(sum > 0))
                    {
                        return false;
                    }

                    matrix[(row * size) + row] = Math.Sqrt(sum);
                }
                else
                {
                    matrix[(row * size) + column] = sum / matrix[(column * size) + column];
                }
            }
        }

        return true;
    }
}
