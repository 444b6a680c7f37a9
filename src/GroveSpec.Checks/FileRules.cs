using System.Collections.Immutable;
using GroveSpec.Checks.Rules;

namespace GroveSpec.Checks;

/// <summary>The rules about the file itself that need the whole planting; the rest of them are decided while it is bound.</summary>
internal static class FileRules
{
    /// <summary>Every rule, once.</summary>
    public static ImmutableArray<IRule> All { get; } =
    [
        new TaskCircle(),
        new CannotFit(),
        new WrongTask(),
        new NoPlace(),
        new NoSize(),
        new Misfit(),
        new UnlikelyReading(),
        new UnusedRole(),
        new DefaultTaken(),
    ];
}
