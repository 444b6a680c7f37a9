using System.Net;
using System.Text.Json;
using System.Text.RegularExpressions;

namespace GroveSpec.Conformance.Tests.Outside;

/// <summary>Chromium without a window.</summary>
internal static class Browser
{
    /// <summary>Runs a script in an empty page and waits for what it gives back.</summary>
    /// <param name="script">The body of an async function; <c>input</c> is the data, and what it returns is the result.</param>
    /// <param name="input">The data, given to the script as it is written in JSON.</param>
    /// <param name="head">Markup for the page's head, such as a style block.</param>
    /// <returns>The result.</returns>
    public static JsonDocument Evaluate(string script, JsonElement input, string head = "")
    {
        using var scratch = new ScratchFolder();
        var page = scratch.Write("page.html", $$"""
            <!doctype html><meta charset="utf-8">{{head}}
            <body><script type="application/json" id="input">{{input.GetRawText().Replace("<", "\\u003c", StringComparison.Ordinal)}}</script>
            <script>
            (async () => {
              const input = JSON.parse(document.getElementById("input").textContent);
              let answer;
              try { answer = { result: await (async () => { {{script}} })() }; } catch (fault) { answer = { fault: String(fault) }; }
              document.open(); document.write("<pre id=answer></pre>"); document.close();
              document.getElementById("answer").textContent = JSON.stringify(answer);
            })();
            </script></body>
            """);
        var visit = Visit(page);
        var text = Regex.Match(visit.Page, "<pre id=\"answer\">(.*)</pre>", RegexOptions.Singleline);
        if (!text.Success)
        {
            throw new InvalidOperationException("The page's script gave no answer. " + string.Join("; ", visit.Console));
        }

        var answer = JsonDocument.Parse(WebUtility.HtmlDecode(text.Groups[1].Value));
        return answer.RootElement.TryGetProperty("fault", out var fault) ? throw new InvalidOperationException(fault.GetString()) : answer;
    }

    /// <summary>Opens a page and tells what came of it.</summary>
    /// <param name="path">The page's file.</param>
    /// <returns>The page as it stands once loaded, and what the console said, violations of the page's own security policy among it.</returns>
    public static Visit Visit(string path)
    {
        using var scratch = new ScratchFolder();
        var (page, errors) = OutsideProgram.Chromium.Run(
        [
            "--headless", "--no-sandbox", "--disable-gpu", "--no-first-run", "--disable-background-networking", "--disable-sync",
            "--disable-component-update", "--disable-default-apps", "--disable-extensions", "--disable-dev-shm-usage", "--hide-scrollbars",
            "--force-device-scale-factor=1", "--window-size=1200,900", "--host-resolver-rules=MAP * ~NOTFOUND",
            $"--user-data-dir={Path.Combine(scratch.Folder, "profile")}", "--enable-logging=stderr",
            "--virtual-time-budget=1000000", "--dump-dom", new Uri(path).AbsoluteUri,
        ]);
        var console = Regex.Matches(errors, @"CONSOLE[^\]]*\] (.*)").Select(match => match.Groups[1].Value).ToArray();
        return new Visit(page, console);
    }
}
