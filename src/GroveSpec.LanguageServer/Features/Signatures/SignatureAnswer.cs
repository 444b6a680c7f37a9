using GroveSpec.Editing.Completing;
using GroveSpec.LanguageServer.Protocol;
using GroveSpec.LanguageServer.Sessions;

namespace GroveSpec.LanguageServer.Features.Signatures;

/// <summary>Shows the form of the statement that is being written.</summary>
internal static class SignatureAnswer
{
    /// <summary>The form of the statement at a place.</summary>
    /// <param name="document">The document.</param>
    /// <param name="position">The caret.</param>
    /// <returns>The form, with the part that is being written marked; null where no statement has begun.</returns>
    public static SignatureHelp? Of(OpenDocument document, Position position)
    {
        if (StatementForm.At(document.Tree, document.Positions.OffsetOf(position)) is not { } form)
        {
            return null;
        }

        return new(
            [
                new(
                    form.Text,
                    new("plaintext", form.Purpose),
                    [.. form.Parts.Select(part => new ParameterInformation([part.Span.Start, part.Span.End], new("plaintext", part.Purpose)))]),
            ],
            0,
            form.Current);
    }
}
