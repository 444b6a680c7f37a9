using System.Collections.Immutable;
using GroveSpec.Binding.Use;
using GroveSpec.Editing.Names;
using GroveSpec.LanguageServer.Features.WorkspaceFiles;
using GroveSpec.LanguageServer.Protocol;
using GroveSpec.LanguageServer.Sessions;
using GroveSpec.LanguageServer.Transport;
using GroveSpec.Syntax.Text;
using GroveSpec.Syntax.Tree;
using TextEdit = GroveSpec.LanguageServer.Protocol.TextEdit;

namespace GroveSpec.LanguageServer.Features.Names;

/// <summary>Finds names and changes them, in one file and over all that use each other.</summary>
internal static class NameAnswers
{
    private const int Read = 2;
    private const int Write = 3;

    /// <summary>Where the thing under the caret gets its name.</summary>
    /// <param name="document">The document.</param>
    /// <param name="position">The caret.</param>
    /// <returns>The places; none for what the program itself brings, null where no name stands.</returns>
    public static Location[]? Definition(OpenDocument document, Position position)
    {
        if (NameUses.At(document.Tree, document.Positions.OffsetOf(position)) is not { } use)
        {
            return null;
        }

        if (use.Kind == NameKind.File)
        {
            return NamedFile.Of(document.Assessment, use.Name) is { } file && Path.IsPathRooted(file.Path) ? [new(DocumentAddress.UriOf(Path.GetFullPath(file.Path)), new(new(0, 0), new(0, 0)))] : [];
        }

        return [.. Texts(document).SelectMany(text => NameUses.Of(text.Tree).Where(other => other.IsDeclaration && other.Means(use)).Select(other => text.LocationOf(other.Span)))];
    }

    /// <summary>Every place where the name under the caret stands.</summary>
    /// <param name="session">The session.</param>
    /// <param name="document">The document.</param>
    /// <param name="asked">The caret, and whether the place that gives the name counts.</param>
    /// <param name="cancellation">Ends the search.</param>
    /// <returns>The places, those of this document first; null where no name stands.</returns>
    public static Location[]? References(Session session, OpenDocument document, ReferenceParams asked, CancellationToken cancellation)
    {
        if (NameUses.At(document.Tree, document.Positions.OffsetOf(asked.Position)) is not { } use)
        {
            return null;
        }

        using var work = new WorkProgress(session, asked.WorkDoneToken, $"Looking for {ShortText.Of(use.Name)} in the plantings of this workspace", cancellation);
        return
        [
            .. Sharing(session, document, use, work).SelectMany(text => NameUses.Of(text.Tree)
                .Where(other => other.Means(use) && (asked.Context.IncludeDeclaration || !other.IsDeclaration))
                .Select(other => text.LocationOf(other.Span))),
        ];
    }

    /// <summary>The places of this document where the name under the caret stands.</summary>
    /// <param name="document">The document.</param>
    /// <param name="position">The caret.</param>
    /// <returns>The places; null where no name stands.</returns>
    public static DocumentHighlight[]? Highlights(OpenDocument document, Position position) =>
        NameUses.At(document.Tree, document.Positions.OffsetOf(position)) is { } use
            ? [.. NameUses.Of(document.Tree).Where(other => other.Means(use)).Select(other => new DocumentHighlight(document.Positions.RangeOf(other.Span), other.IsDeclaration ? Write : Read))]
            : null;

    /// <summary>Whether the name under the caret can be changed.</summary>
    /// <param name="document">The document.</param>
    /// <param name="position">The caret.</param>
    /// <returns>The name.</returns>
    /// <exception cref="RequestException">It cannot; the message says why.</exception>
    public static PrepareRenameResult PrepareRename(OpenDocument document, Position position)
    {
        var use = Renamed(document, position);
        return new(document.Positions.RangeOf(use.Span), document.Text.Slice(use.Span));
    }

    /// <summary>Gives the thing under the caret another name, in every file that means it.</summary>
    /// <param name="session">The session.</param>
    /// <param name="document">The document.</param>
    /// <param name="asked">The caret and the new name.</param>
    /// <param name="cancellation">Ends the search.</param>
    /// <returns>The edits.</returns>
    /// <exception cref="RequestException">It cannot bear that name; the message says why.</exception>
    public static WorkspaceEdit Rename(Session session, OpenDocument document, RenameParams asked, CancellationToken cancellation)
    {
        var use = Renamed(document, asked.Position);
        using var work = new WorkProgress(session, asked.WorkDoneToken, $"Looking for {ShortText.Of(use.Name)} in the plantings of this workspace", cancellation);
        List<NamedText> texts = [.. Sharing(session, document, use, work)];
        if (Renaming.Refusal(use, asked.NewName, texts.SelectMany(text => text.Trees).Distinct()) is { } refusal)
        {
            throw new RequestException(RequestException.RequestFailed, refusal);
        }

        return EditWording.Of(session, texts.Select(text => (
            text.Uri,
            session.Find(text.Uri)?.Version,
            (IReadOnlyList<TextEdit>)[.. Renaming.Edits(text.Uri, text.Tree, use, asked.NewName).Select(edit => new TextEdit(text.Positions.RangeOf(edit.Place.Span), edit.NewText))])));
    }

    private static NameUse Renamed(OpenDocument document, Position position)
    {
        var use = NameUses.At(document.Tree, document.Positions.OffsetOf(position));
        return Renaming.Refusal(use) is { } refusal ? throw new RequestException(RequestException.RequestFailed, refusal) : use!.Value;
    }

    /// <summary>The texts in which a planting's names can be given: its own, and those it uses.</summary>
    private static IEnumerable<NamedText> Texts(OpenDocument document)
    {
        yield return new(document);
        foreach (var used in document.Assessment.Used)
        {
            if (Path.IsPathRooted(used.Path))
            {
                yield return new(DocumentAddress.UriOf(Path.GetFullPath(used.Path)), used.Tree, new(used.Tree.Text, document.Positions.IsUtf8), []);
            }
        }
    }

    /// <summary>
    /// The texts that mean the same thing by a name. A trunk or a task belongs to its file. A role or a species belongs to the file
    /// that describes it and to all that use that one.
    /// </summary>
    private static IEnumerable<NamedText> Sharing(Session session, OpenDocument document, NameUse use, WorkProgress work)
    {
        yield return new(document);
        if (use.Kind is not (NameKind.Role or NameKind.Species))
        {
            yield break;
        }

        var seen = new HashSet<string>(StringComparer.Ordinal) { document.Key };
        List<NamedText> homes = [.. Texts(document).Where(text => NameUses.Of(text.Tree).Any(other => other.IsDeclaration && other.Means(use)))];
        foreach (var home in homes)
        {
            if (seen.Add(DocumentAddress.KeyOf(home.Uri)))
            {
                yield return session.Find(home.Uri) is { } open ? new(open) : home;
            }
        }

        var keys = homes.Select(home => DocumentAddress.KeyOf(home.Uri)).ToHashSet(StringComparer.Ordinal);
        foreach (var other in PlantingFiles.All(session, work))
        {
            if (!seen.Contains(other.Key) && keys.Any(key => UsedPaths.Has(other.Assessment, key)) && seen.Add(other.Key))
            {
                yield return new(other);
            }
        }
    }

    private sealed record NamedText(string Uri, SyntaxTree Tree, PositionMap Positions, ImmutableArray<UsedFile> Used)
    {
        public NamedText(OpenDocument document)
            : this(document.Uri, document.Tree, document.Positions, document.Assessment.Used)
        {
        }

        /// <summary>Its own tree, and those of all that it uses, where the same names may be taken.</summary>
        public IEnumerable<SyntaxTree> Trees => Used.Select(used => used.Tree).Prepend(Tree);

        public Location LocationOf(TextSpan span) => new(Uri, Positions.RangeOf(span));
    }
}
