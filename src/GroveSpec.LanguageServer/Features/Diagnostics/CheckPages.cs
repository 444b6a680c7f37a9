using System.Collections.Concurrent;
using GroveSpec.Checks;
using GroveSpec.LanguageServer.Sessions;

namespace GroveSpec.LanguageServer.Features.Diagnostics;

/// <summary>Where the pages that explain checks lie: beside the program, as it is delivered.</summary>
internal static class CheckPages
{
    // A page is looked for once: of a file with hundreds of findings each edit would look hundreds of times.
    private static readonly ConcurrentDictionary<string, string?> Known = new(StringComparer.Ordinal);

    /// <summary>The address of a check's page.</summary>
    /// <param name="check">The check.</param>
    /// <returns>The address; null where the page was not delivered.</returns>
    public static string? Of(CheckDescription check) => Known.GetOrAdd(check.Page, static page =>
    {
        var path = Path.Combine(AppContext.BaseDirectory, page);
        return File.Exists(path) ? DocumentAddress.UriOf(path) : null;
    });
}
