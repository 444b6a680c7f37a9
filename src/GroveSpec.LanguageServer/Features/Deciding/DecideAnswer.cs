using GroveSpec.Editing.Deciding;
using GroveSpec.LanguageServer.Features.Drawings;
using GroveSpec.LanguageServer.Sessions;
using GroveSpec.LanguageServer.Transport;

namespace GroveSpec.LanguageServer.Features.Deciding;

/// <summary>Looks into what is to be decided about a document.</summary>
internal static class DecideAnswer
{
    /// <summary>What there is to choose from.</summary>
    /// <param name="document">The document.</param>
    /// <param name="asked">The question, and what was written into its fields.</param>
    /// <param name="cancellation">Ends the search.</param>
    /// <returns>The choices.</returns>
    /// <exception cref="RequestException">There is no such question.</exception>
    /// <exception cref="OperationCanceledException">The search was ended.</exception>
    public static DecideResult Of(OpenDocument document, DecideParams asked, CancellationToken cancellation)
    {
        var question = asked.Question switch
        {
            "survey" => Question.Survey,
            "thin" => Question.Thin,
            "fronts" => Question.Fronts,
            "nudge" => Question.Nudge,
            "ground" => Question.Ground,
            "stand" => Question.Stand,
            _ => throw new RequestException(RequestException.InvalidParameters, "There are the questions survey, thin, fronts, nudge, ground and stand."),
        };
        var sheet = Decisions.Of(document.Assessment, question, asked.Answers ?? [], AtOnce.Do, cancellation);
        return new(
            document.Version,
            document.Title,
            [.. sheet.Says],
            sheet.Picture,
            [.. sheet.Ways.Select(way => new DecideWay(way.Title, [.. way.Says], way.Picture, [.. way.Edits.Select(document.Positions.EditOf)], way.Deed))],
            [.. sheet.Notes],
            [.. sheet.Fields.Select(field => new DecideField(field.Name, field.Label, field.Value, field.Hint, field.Trouble))],
            [.. DrawAnswer.Places(document, [sheet.Picture, .. sheet.Ways.Select(way => way.Picture)])]);
    }
}
