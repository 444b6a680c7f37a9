using CsCheck;
using GroveSpec.Craft.Stand;
using GroveSpec.Craft.Survey;
using MathNet.Numerics.Distributions;
using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.Optimization;
using Xunit;

namespace GroveSpec.Craft.Tests.Survey;

/// <summary>What the survey is made of, against an independent general library: MathNet.Numerics.</summary>
public sealed class SurveyMathematicsTests
{
    [Fact]
    public void Readings_with_noise_are_fitted_as_the_library_fits_them()
    {
        var random = new SeededRandom(3);
        for (var trial = 0; trial < 100; trial++)
        {
            var read = SurveyedLayout.Scattered(random, 7, 3).ReadAllPairs(() => 0.5 * random.NextNormal());
            var truth = read.True();
            var survey = read.Survey();
            if (survey.Readings.Any(reading => reading.Kind != SurveyedReadingKind.Fits))
            {
                continue;
            }

            var pairs = read.Tapes.Select(tape => (From: int.Parse(tape.From[1..]), To: int.Parse(tape.To[1..]))).ToArray();
            double At(Vector<double> sought, int trunk, int axis) => trunk >= 3 ? sought[(2 * (trunk - 3)) + axis] : axis == 0 ? read.Places[trunk].X : read.Places[trunk].Y;
            double Reading(Vector<double> sought, (int From, int To) pair) =>
                SurveyedLayout.Distance((At(sought, pair.From, 0), At(sought, pair.From, 1)), (At(sought, pair.To, 0), At(sought, pair.To, 1)));
            var model = ObjectiveFunction.NonlinearModel(
                (sought, _) => Vector<double>.Build.Dense(pairs.Length, index => Reading(sought, pairs[index])),
                Vector<double>.Build.Dense(pairs.Length, index => index),
                Vector<double>.Build.Dense(pairs.Length, index => read.Tapes[index].Distance.Millimetres));
            var fitted = new LevenbergMarquardtMinimizer().FindMinimum(model, Vector<double>.Build.Dense(8, index => index % 2 == 0 ? read.Places[3 + (index / 2)].X : read.Places[3 + (index / 2)].Y)).MinimizingPoint;
            for (var trunk = 3; trunk < 7; trunk++)
            {
                Assert.Equal(fitted[2 * (trunk - 3)], survey.Trunks[trunk].Place!.Value.X.Millimetres, 1e-3);
                Assert.Equal(fitted[(2 * (trunk - 3)) + 1], survey.Trunks[trunk].Place!.Value.Y.Millimetres, 1e-3);
            }
        }
    }

    [Fact]
    public void Equations_are_solved_and_inverted_as_the_library_does() =>
        Gen.Double[-1, 1].Array[48].Sample(numbers =>
        {
            var factor = Matrix<double>.Build.Dense(8, 6, numbers);
            var normal = factor.TransposeThisAndMultiply(factor) + (0.1 * Matrix<double>.Build.DenseIdentity(6));
            double[] rows = normal.ToRowMajorArray(), right = [1, 2, 3, 4, 5, 6];
            var inverse = SymmetricMatrix.Inverse(rows, 6)!;
            Assert.True((normal.Inverse() - Matrix<double>.Build.Dense(6, 6, inverse)).L2Norm() < 1e-9);
            var expected = normal.Solve(Vector<double>.Build.DenseOfArray(right));
            Assert.True(SymmetricMatrix.Solve(rows, right));
            Assert.True((expected - Vector<double>.Build.DenseOfArray(right)).L2Norm() < 1e-9);
        });

    [Fact]
    public void Directions_without_weight_are_as_many_as_the_library_counts_and_have_no_weight() =>
        Gen.Select(Gen.Int[-3, 3].Array[24], Gen.Int[1, 4]).Sample((numbers, rows) =>
        {
            // Small whole numbers have a rank that no rounding blurs.
            var factor = Matrix<double>.Build.Dense(rows, 6, [.. numbers[..(rows * 6)].Select(number => (double)number)]);
            var normal = factor.TransposeThisAndMultiply(factor);
            var directions = SymmetricMatrix.NullSpace(normal.ToRowMajorArray(), 6);
            Assert.Equal(6 - factor.Rank(), directions.Count);
            Assert.All(directions, direction => Assert.True((normal * Vector<double>.Build.DenseOfArray(direction.Vector)).L2Norm() < 1e-6));
        });

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(6)]
    [InlineData(15)]
    [InlineData(60)]
    public void Quantiles_and_probabilities_are_those_of_the_library(int freedom)
    {
        Assert.Equal(FisherSnedecor.InvCDF(2, freedom, 0.95), ReadingPrecision.FisherQuantile(freedom, 0.05), 1e-6 * FisherSnedecor.InvCDF(2, freedom, 0.95));
        foreach (var t in new[] { 0, 0.3, 1, 2.5, 6, 20 })
        {
            Assert.Equal(2 * StudentT.CDF(0, 1, freedom, -t), StudentProbability.Beyond(t, freedom), 1e-10);
        }
    }
}
