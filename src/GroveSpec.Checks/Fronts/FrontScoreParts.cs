namespace GroveSpec.Checks.Fronts;

/// <summary>What the score of a front is made of, the lower the better.</summary>
/// <param name="Findings">What is found from there: 3 for an error, 1 for a warning, a half for a hint.</param>
/// <param name="Turning">What more is found where the pot stands a little off: the mean over all hundredths of a degree within two degrees, the nearest counted most.</param>
/// <param name="Covered">Three times the mean share of the trunks that is covered.</param>
/// <param name="Sameness">A quarter when each gap is like the next, nothing when of each two one is nothing.</param>
/// <param name="Narrowness">Twice what the container's width, of its width and depth together, falls short of the most there is from any whole degree, in that most; nothing without a container.</param>
public sealed record FrontScoreParts(double Findings, double Turning, double Covered, double Sameness, double Narrowness)
{
    /// <summary>The sum.</summary>
    public double Score => Findings + Turning + Covered + Sameness + Narrowness;
}
