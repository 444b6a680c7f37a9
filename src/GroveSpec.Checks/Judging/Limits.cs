using GroveSpec.Model.Judgement;

namespace GroveSpec.Checks.Judging;

/// <summary>The limit of each check for one planting: its own, or the one that the file sets.</summary>
internal sealed class Limits
{
    private readonly Dictionary<string, double> set = new(StringComparer.Ordinal);

    /// <summary>Reads the tolerances of a planting.</summary>
    /// <param name="context">The planting.</param>
    public Limits(CheckContext context)
    {
        foreach (var tolerance in context.Planting.Tolerances)
        {
            // The first of a check holds; an unknown name is a matter of binding.
            if (set.ContainsKey(tolerance.Check) || Catalogue.Find(tolerance.Check) is not { } check)
            {
                continue;
            }

            if (check.Limit is not { } limit)
            {
                Findings.Add(Odd(context, tolerance, $"{check.Name} has no limit that could be set: take the tolerance out."));
            }
            else if (AmountIn(limit.Unit, tolerance) is not { } amount)
            {
                Findings.Add(Odd(context, tolerance, $"{check.Name} takes a limit {Kind(limit.Unit)}, such as {Say(limit.Amount, limit.Unit)}. That limit was used."));
            }
            else if (!(amount >= limit.Smallest && amount <= limit.Largest))
            {
                Findings.Add(Odd(context, tolerance, $"{check.Name} takes a limit from {Say(limit.Smallest, limit.Unit)} to {Say(limit.Largest, limit.Unit)}. Its usual limit of {Say(limit.Amount, limit.Unit)} was used.") with { Measured = amount });
            }
            else
            {
                set.Add(check.Name, amount);
            }
        }
    }

    /// <summary>What is wrong with the tolerances.</summary>
    public List<Finding> Findings { get; } = [];

    /// <summary>A limit with its unit.</summary>
    /// <param name="amount">The amount.</param>
    /// <param name="unit">Its unit.</param>
    /// <returns>Such as "8 %".</returns>
    public static string Say(double amount, ToleranceUnit unit) => LengthWording.Say(amount, 6) + unit switch
    {
        ToleranceUnit.Percent => " %",
        ToleranceUnit.Millimetres => " mm",
        ToleranceUnit.Degrees => " deg",
        ToleranceUnit.Days => " days",
        _ => "",
    };

    /// <summary>The limit that holds for a check.</summary>
    /// <param name="check">The check.</param>
    /// <returns>The limit in the unit of its description, 0 for a check without one.</returns>
    public double For(CheckDescription check) => set.TryGetValue(check.Name, out var amount) ? amount : check.Limit?.Amount ?? 0;

    private static double? AmountIn(ToleranceUnit unit, Tolerance tolerance) => (unit, tolerance.Unit) switch
    {
        var (wanted, given) when wanted == given => tolerance.Amount,

        // A bare number takes the unit that the check gives.
        (_, ToleranceUnit.Ratio) => tolerance.Amount,
        (ToleranceUnit.Ratio, ToleranceUnit.Percent) => tolerance.Amount / 100,
        _ => null,
    };

    private static string Kind(ToleranceUnit unit) => unit switch
    {
        ToleranceUnit.Percent => "in percent",
        ToleranceUnit.Millimetres => "as a distance",
        ToleranceUnit.Degrees => "as an angle",
        ToleranceUnit.Days => "as a time",
        _ => "as a bare number",
    };

    private static Finding Odd(CheckContext context, Tolerance tolerance, string message) => new()
    {
        Check = FileChecks.OddTolerance,
        Severity = FileChecks.OddTolerance.Severity,
        Place = context.Origins.Locate(tolerance.Origin),
        Message = message,
    };
}
