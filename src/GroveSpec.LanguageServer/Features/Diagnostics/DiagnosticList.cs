using System.Text.Json;
using GroveSpec.Checks;
using GroveSpec.LanguageServer.Protocol;
using GroveSpec.LanguageServer.Sessions;
using GroveSpec.Syntax.Text;

namespace GroveSpec.LanguageServer.Features.Diagnostics;

/// <summary>Puts findings into the protocol's words.</summary>
internal static class DiagnosticList
{
    /// <summary>Who speaks, as the editor shows it beside a finding.</summary>
    public const string Source = "grovespec";

    private const int Error = 1;
    private const int Warning = 2;
    private const int Hint = 4;
    private const int Unnecessary = 1;

    /// <summary>The findings of a document, in their own order.</summary>
    /// <param name="document">The document.</param>
    /// <returns>What was found. A finding that lies in a used file stands at the line that uses it.</returns>
    public static Diagnostic[] Of(OpenDocument document) => [.. document.Assessment.Findings.Select(finding => Of(document, finding))];

    /// <summary>One finding.</summary>
    /// <param name="document">The document.</param>
    /// <param name="finding">The finding.</param>
    /// <returns>It in the protocol's words.</returns>
    public static Diagnostic Of(OpenDocument document, Finding finding)
    {
        var related = finding.Related.Select(place => new DiagnosticRelatedInformation(LocationOf(document, place.Place), place.Message));
        var isHere = finding.Place.File == document.Key;
        if (!isHere)
        {
            related = related.Prepend(new(LocationOf(document, finding.Place), "It stands here."));
        }

        DiagnosticRelatedInformation[] places = [.. related];
        return new(
            document.Positions.RangeOf(isHere ? finding.Place.Span : UsePlaces.Of(document, finding.Place.File)),
            finding.Message,
            SeverityOf(finding.Severity),
            CodeOf(finding.Check),
            CheckPages.Of(finding.Check) is { } page ? new(page) : null,
            Source,
            IsUnnecessary(finding.Check) ? [Unnecessary] : null,
            places.Length == 0 ? null : places);
    }

    /// <summary>What is said where a document could not be looked at.</summary>
    /// <param name="fault">What went wrong.</param>
    /// <returns>One finding at the start of the text.</returns>
    public static Diagnostic OfFault(Exception fault) => new(
        new(new(0, 0), new(0, 0)),
        $"This file could not be looked at ({fault.GetType().Name}). That is a fault of GroveSpec, not of the planting; it tries again when the text changes.",
        Error,
        CodeOf(FileChecks.BrokenCheck),
        Source: Source);

    private static JsonElement CodeOf(CheckDescription check) => JsonSerializer.SerializeToElement(check.Name, ProtocolContext.Default.String);

    private static int SeverityOf(Severity severity) => severity switch
    {
        Severity.Error => Error,
        Severity.Warning => Warning,
        _ => Hint,
    };

    /// <summary>Lines that do nothing are shown faded.</summary>
    private static bool IsUnnecessary(CheckDescription check) => check.Name is "unused-role" or "stale-accept";

    private static Location LocationOf(OpenDocument document, SourceSpan place)
    {
        var map = place.File == document.Key ? document.Positions : new PositionMap(document.Assessment.TextOf(place.File), document.Positions.IsUtf8);
        return new(place.File == document.Key ? document.Uri : DocumentAddress.UriOf(Path.GetFullPath(place.File)), map.RangeOf(place.Span));
    }
}
