namespace GroveSpec.Craft.Survey;

/// <summary>How likely chance gives a misfit as large.</summary>
internal static class StudentProbability
{
    /// <summary>The share of Student's distribution beyond ±t, by the closed series for whole degrees of freedom (Abramowitz and Stegun 1964, 26.7.3 and 26.7.4; from memory, held against a library in the tests).</summary>
    /// <param name="t">The statistic, from 0.</param>
    /// <param name="freedom">Degrees of freedom, from 1.</param>
    /// <returns>From 0 to 1; below about 10⁻¹³ rounding makes it 0.</returns>
    public static double Beyond(double t, int freedom)
    {
        var angle = Math.Atan(t / Math.Sqrt(freedom));
        var (sine, cosine) = Math.SinCos(angle);
        double term, sum;
        if (freedom % 2 == 1)
        {
            (term, sum) = (cosine, freedom > 1 ? cosine : 0);
            for (var k = 3; k < freedom; k += 2)
            {
                term *= (k - 1.0) / k * cosine * cosine;
                sum += term;
            }

            return Math.Max(0, 1 - (2 / Math.PI * (angle + (sine * sum))));
        }

        (term, sum) = (1, 1);
        for (var k = 2; k < freedom; k += 2)
        {
            term *= (k - 1.0) / k * cosine * cosine;
            sum += term;
        }

        return Math.Max(0, 1 - (sine * sum));
    }
}
