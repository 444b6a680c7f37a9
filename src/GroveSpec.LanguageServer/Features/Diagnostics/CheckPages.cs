using GroveSpec.Checks;
using GroveSpec.LanguageServer.Sessions;

namespace GroveSpec.LanguageServer.Features.Diagnostics;

/// <summary>Where the pages that explain checks lie: beside the program, as it is delivered.</summary>
internal static class CheckPages
{
    /// <summary>The address of a check's page.</summary>
    /// <param name="check">The check.</param>
    /// <returns>The address; null where the page was not delivered.</returns>
    public static string? Of(CheckDescription check)
    {
        var path = Path.Combine(AppContext.BaseDirectory, check.Page);
        return File.Exists(path) ? DocumentAddress.UriOf(path) : null;
    }
}
