namespace GroveSpec.Benchmarks;

/// <summary>A program, what it is asked to do, and what it took.</summary>
/// <param name="Title">What it does, for the table.</param>
/// <param name="Program">Its path.</param>
/// <param name="Words">The words of its command line.</param>
internal sealed record Contest(string Title, string Program, string[] Words)
{
    private readonly List<double> times = [];

    /// <summary>The time of the run that was disturbed least, in milliseconds.</summary>
    public double Least => times.Min();

    /// <summary>The time of the run in the middle, in milliseconds.</summary>
    public double Median => times.Order().ElementAt(times.Count / 2);

    /// <summary>The most memory it took, in megabytes; null where that cannot be measured.</summary>
    public double? Memory { get; private set; }

    /// <summary>Runs it once more.</summary>
    public void Run() => times.Add(ProcessRun.Milliseconds(Program, Words));

    /// <summary>Runs it once to see how much memory it takes.</summary>
    public void Weigh() => Memory = ProcessRun.Megabytes(Program, Words);
}
