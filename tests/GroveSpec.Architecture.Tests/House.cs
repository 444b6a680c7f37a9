using System.Reflection;
using System.Xml.Linq;

namespace GroveSpec.Architecture.Tests;

/// <summary>The project's folders, files and assemblies.</summary>
internal static class House
{
    public static readonly string Root = Find(AppContext.BaseDirectory);

    /// <summary>The rooms in their order: each may know those that stand before it in its row, and no other.</summary>
    public static readonly IReadOnlyDictionary<string, string[]> Known = new Dictionary<string, string[]>(StringComparer.Ordinal)
    {
        ["Model"] = [],
        ["Syntax"] = [],
        ["Craft"] = ["Model"],
        ["Checks"] = ["Model", "Craft", "Syntax"],
        ["Binding"] = ["Model", "Craft", "Syntax", "Checks"],
        ["Drawing"] = ["Model", "Craft", "Checks"],
        ["Publishing"] = ["Model", "Syntax", "Craft", "Checks", "Binding", "Drawing"],
        ["Editing"] = ["Model", "Syntax", "Craft", "Checks", "Binding", "Drawing"],
        ["LanguageServer"] = ["Model", "Syntax", "Craft", "Checks", "Binding", "Drawing", "Editing"],
        ["Cli"] = ["Model", "Syntax", "Craft", "Checks", "Binding", "Drawing", "Publishing", "LanguageServer"],
    };

    public static TheoryData<string> Rooms() => [.. Known.Keys];

    public static Assembly AssemblyOf(string room) => Assembly.Load(room == "Cli" ? "grovespec" : $"GroveSpec.{room}");

    /// <summary>A room's source files, without what tools generate.</summary>
    public static IEnumerable<SourceFile> SourcesOf(string room) => SourcesBelow(Path.Combine(Root, "src", $"GroveSpec.{room}"));

    public static IEnumerable<SourceFile> SourcesBelow(string folder) => Directory.EnumerateFiles(folder, "*.cs", SearchOption.AllDirectories)
        .Where(path => !path.Split(Path.DirectorySeparatorChar).Any(part => part is "obj" or "bin" or "Generated" or "node_modules"))
        .Order(StringComparer.Ordinal)
        .Select(path => new SourceFile(path));

    public static XDocument ProjectOf(string room) => XDocument.Load(Path.Combine(Root, "src", $"GroveSpec.{room}", $"GroveSpec.{room}.csproj"));

    private static string Find(string folder) => File.Exists(Path.Combine(folder, "GroveSpec.sln"))
        ? folder
        : Find(Directory.GetParent(folder)?.FullName ?? throw new InvalidOperationException("The tests do not lie in the project."));
}
