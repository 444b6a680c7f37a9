using Xunit;

namespace GroveSpec.Conformance.Tests.Drawn;

/// <summary>A file that was looked at and found right, to hold later results against.</summary>
internal static class Snapshot
{
    private const string AcceptVariable = "GROVESPEC_ACCEPT";

    /// <summary>Compares, and says how to accept when the two differ.</summary>
    /// <param name="path">The accepted file.</param>
    /// <param name="text">The result.</param>
    /// <returns>Null when they are equal; otherwise what to do.</returns>
    public static string? Compare(string path, string text)
    {
        var accepted = File.Exists(path) ? File.ReadAllText(path) : null;
        if (accepted == text)
        {
            return null;
        }

        if (Environment.GetEnvironmentVariable(AcceptVariable) == "1")
        {
            File.WriteAllText(path, text);
            return null;
        }

        var received = Path.ChangeExtension(path, ".received" + Path.GetExtension(path));
        File.WriteAllText(received, text);
        return $"{Path.GetRelativePath(Repository.Root, path)} {(accepted is null ? "is not there" : "differs")}. Look at the new one, then accept it: mv '{received}' '{path}'";
    }

    /// <summary>Fails when any comparison did, with all that there is to do.</summary>
    /// <param name="troubles">What <see cref="Compare"/> gave.</param>
    public static void AssertAccepted(IEnumerable<string?> troubles)
    {
        string[] told = [.. troubles.OfType<string>()];
        Assert.True(
            told.Length == 0,
            string.Join('\n', told) + $"\nAll at once: {AcceptVariable}=1 dotnet run --project tests/GroveSpec.Conformance.Tests -- --filter-class '*SampleTests'");
    }
}
