using System.Text.Json.Nodes;
using Xunit;

namespace GroveSpec.LanguageServer.Tests;

/// <summary>A small planting that is open in an editor, to be asked about.</summary>
public abstract class RowHouse : IAsyncLifetime
{
    private protected const string Text = """
        # A 🌲 wood
        planting "Row House"
        habit group
        species larix-kaempferi
        container oval 400 x 300 x 40 mm
        viewed from 180 deg, at 1100 mm, eye 160 mm, near

        trunk A at -60, 0 mm diameter 20 mm height 300 mm role main
        trunk B at 0, 2 mm girth 44 mm height 220 mm role lee
        trunk C at 70, 0 mm diameter 16 mm height 180 mm

        role main { form stout vigour push }
        role lee { form slender vigour steady }
        task W1 wire on B C in late autumn 2026
        task U1 unwire of W1 6 to 8 weeks after W1
        measured 2026-10-30 {
          A diameter 21 mm
        }
        """;

    private protected ScratchFolder Folder { get; } = new();

    private protected EditorStandIn Editor { get; private set; } = null!;

    private protected string Uri { get; private set; } = "";

    public async ValueTask InitializeAsync()
    {
        Uri = Folder.Write("a.grove", Text);
        Editor = await EditorStandIn.StartAsync(
            new JsonObject
            {
                ["workspace"] = new JsonObject { ["workspaceEdit"] = new JsonObject { ["documentChanges"] = true } },
                ["textDocument"] = new JsonObject
                {
                    ["completion"] = new JsonObject { ["completionItem"] = new JsonObject { ["snippetSupport"] = true } },
                    ["documentSymbol"] = new JsonObject { ["hierarchicalDocumentSymbolSupport"] = true },
                },
            },
            Folder.Path);
        await Editor.OpenAsync(Uri, Text);
    }

    public async ValueTask DisposeAsync()
    {
        await Editor.DisposeAsync();
        Folder.Dispose();
        GC.SuppressFinalize(this);
    }

    private protected JsonObject Of(params (string Name, JsonNode? Value)[] more)
    {
        var parameters = new JsonObject { ["textDocument"] = new JsonObject { ["uri"] = Uri } };
        foreach (var (name, value) in more)
        {
            parameters[name] = value;
        }

        return parameters;
    }

    private protected JsonObject Place(string at, int into)
    {
        var before = Text[..(Text.IndexOf(at, StringComparison.Ordinal) + into)].Split('\n');
        return LifeTests.At(Uri, before.Length - 1, before[^1].Length);
    }

    private protected static string Slice(JsonNode range)
    {
        var (start, end) = (Offset(Text, range["start"]!), Offset(Text, range["end"]!));
        return Text[start..end];
    }

    private static int Offset(string text, JsonNode position) => text.Split('\n').Take((int)position["line"]!).Sum(line => line.Length + 1) + (int)position["character"]!;

    private protected static string Apply(string text, JsonArray edits)
    {
        foreach (var edit in edits.OrderByDescending(edit => Offset(text, edit!["range"]!["start"]!)))
        {
            text = string.Concat(text.AsSpan(0, Offset(text, edit!["range"]!["start"]!)), (string)edit["newText"]!, text.AsSpan(Offset(text, edit["range"]!["end"]!)));
        }

        return text;
    }
}
