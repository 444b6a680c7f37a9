using System.Reflection;
using System.Text.Json;
using System.Text.Json.Serialization;
using GroveSpec.LanguageServer.Protocol;
using Xunit;

namespace GroveSpec.LanguageServer.Tests;

/// <summary>
/// Holds each protocol type against the protocol's own machine-readable model: Language Server Protocol, metaModel.json of version
/// 3.18, which holds all of 3.17 and marks what came later. It is read from the folder that GROVESPEC_REFERENCE names.
/// </summary>
public sealed class ProtocolTests
{
    /// <summary>Records that stand for several types of the protocol at once, each with those types.</summary>
    private static readonly Dictionary<string, string[]> Joined = new(StringComparer.Ordinal)
    {
        ["DocumentDiagnosticReport"] = ["FullDocumentDiagnosticReport", "UnchangedDocumentDiagnosticReport"],
        ["WorkspaceDocumentDiagnosticReport"] = ["WorkspaceFullDocumentDiagnosticReport", "WorkspaceUnchangedDocumentDiagnosticReport"],
        ["SemanticTokensOrDelta"] = ["SemanticTokens", "SemanticTokensDelta"],
        ["WorkDoneProgress"] = ["WorkDoneProgressBegin", "WorkDoneProgressReport", "WorkDoneProgressEnd"],
        ["PrepareRenameResult"] = ["PrepareRenamePlaceholder"],
        ["TextDocumentContentChangeEvent"] = ["TextDocumentContentChangePartial", "TextDocumentContentChangeWholeDocument"],
    };

    private static IEnumerable<Type> Records => typeof(Position).Assembly.GetTypes()
        .Where(type => type.Namespace == typeof(Position).Namespace && !type.IsNested && !typeof(JsonSerializerContext).IsAssignableFrom(type))
        .OrderBy(type => type.Name, StringComparer.Ordinal);

    [Fact]
    public void Protocol_records_have_only_properties_that_the_protocol_gives_them_and_of_their_types()
    {
        var model = Model();
        Assert.All(Records, record => CheckProperties(model, record.Name));
    }

    [Fact]
    public void Protocol_records_that_are_sent_have_all_properties_that_must_be_there()
    {
        var model = Model();
        Assert.All(Records, record => CheckRequired(model, record.Name));
    }

    private static void CheckProperties(JsonElement model, string name)
    {
        var type = typeof(Position).Assembly.GetType($"{typeof(Position).Namespace}.{name}")!;
        var properties = Joined.GetValueOrDefault(name, [name]).SelectMany(one => Properties(model, one)).ToLookup(property => property.GetProperty("name").GetString()!, StringComparer.Ordinal);
        foreach (var own in type.GetProperties().Where(property => property.Name != "EqualityContract"))
        {
            var json = own.GetCustomAttribute<JsonPropertyNameAttribute>()?.Name ?? JsonNamingPolicy.CamelCase.ConvertName(own.Name);
            Assert.True(properties.Contains(json), $"{name} has no {json} in the protocol.");
            Assert.True(properties[json].Any(property => Fits(model, property.GetProperty("type"), own.PropertyType)), $"{name}.{json} is {own.PropertyType} here, and {string.Join(" or ", properties[json].Select(property => property.GetProperty("type").GetRawText()))} in the protocol.");
        }
    }

    private static void CheckRequired(JsonElement model, string name)
    {
        // Those that the editor sends may hold more than the server reads.
        if (name.EndsWith("Params", StringComparison.Ordinal) || name.EndsWith("Capabilities", StringComparison.Ordinal) || name is "FormattingOptions" or "CodeActionContext" or "ClientCompletionItemOptions" || Joined.ContainsKey(name))
        {
            return;
        }

        var type = typeof(Position).Assembly.GetType($"{typeof(Position).Namespace}.{name}")!;
        var own = type.GetProperties().Select(property => property.GetCustomAttribute<JsonPropertyNameAttribute>()?.Name ?? JsonNamingPolicy.CamelCase.ConvertName(property.Name)).ToHashSet(StringComparer.Ordinal);
        foreach (var property in Properties(model, name).Where(property => !(property.TryGetProperty("optional", out var optional) && optional.GetBoolean())))
        {
            Assert.Contains(property.GetProperty("name").GetString()!, own);
        }
    }

    [Fact]
    public void Every_method_of_the_server_is_one_of_the_protocol_or_its_own()
    {
        using var session = new Sessions.Session(new NobodyThere());
        var model = Model();
        var known = model.GetProperty("requests").EnumerateArray().Concat(model.GetProperty("notifications").EnumerateArray()).Select(method => method.GetProperty("method").GetString()!).ToHashSet(StringComparer.Ordinal);
        foreach (var (name, _) in new Features.ServerMethods(session, "0", () => { }).All())
        {
            Assert.True(known.Contains(name) || name.StartsWith("grovespec/", StringComparison.Ordinal) || name == "$/unreadable", name);
        }
    }

    private static JsonElement Model()
    {
        var folder = Environment.GetEnvironmentVariable("GROVESPEC_REFERENCE");
        Assert.SkipWhen(string.IsNullOrEmpty(folder), "GROVESPEC_REFERENCE does not name the folder with the protocol's model.");
        using var document = JsonDocument.Parse(File.ReadAllBytes(Path.Combine(folder!, "schemas", "lsp-3.18-metaModel.json")));
        return document.RootElement.Clone();
    }

    private static IEnumerable<JsonElement> Properties(JsonElement model, string name)
    {
        var structure = model.GetProperty("structures").EnumerateArray().FirstOrDefault(structure => structure.GetProperty("name").GetString() == name);
        if (structure.ValueKind == JsonValueKind.Undefined)
        {
            yield break;
        }

        foreach (var property in structure.GetProperty("properties").EnumerateArray())
        {
            yield return property;
        }

        foreach (var list in new[] { "extends", "mixins" })
        {
            foreach (var parent in structure.TryGetProperty(list, out var parents) ? parents.EnumerateArray().ToArray() : [])
            {
                foreach (var property in Properties(model, parent.GetProperty("name").GetString()!))
                {
                    yield return property;
                }
            }
        }
    }

    private static bool Fits(JsonElement model, JsonElement stated, Type own)
    {
        own = Nullable.GetUnderlyingType(own) ?? own;
        if (own == typeof(JsonElement))
        {
            return true;
        }

        switch (stated.GetProperty("kind").GetString())
        {
            case "base":
                return stated.GetProperty("name").GetString() switch
                {
                    "integer" or "uinteger" => own == typeof(int),
                    "decimal" => own == typeof(double),
                    "boolean" => own == typeof(bool),
                    "null" => false,
                    _ => own == typeof(string),
                };
            case "reference":
                var name = stated.GetProperty("name").GetString()!;
                if (own.Name == name || name == "LSPAny" || (Joined.TryGetValue(own.Name, out var several) && several.Contains(name)))
                {
                    return true;
                }

                foreach (var enumeration in model.GetProperty("enumerations").EnumerateArray().Where(enumeration => enumeration.GetProperty("name").GetString() == name))
                {
                    return Fits(model, enumeration.GetProperty("type"), own);
                }

                foreach (var alias in model.GetProperty("typeAliases").EnumerateArray().Where(alias => alias.GetProperty("name").GetString() == name))
                {
                    return Fits(model, alias.GetProperty("type"), own);
                }

                return false;
            case "array":
                return own.IsArray && Fits(model, stated.GetProperty("element"), own.GetElementType()!);
            case "tuple":
                return own.IsArray && stated.GetProperty("items").EnumerateArray().All(item => Fits(model, item, own.GetElementType()!));
            case "map":
                return own.IsGenericType && own.GetGenericTypeDefinition() == typeof(Dictionary<,>) && Fits(model, stated.GetProperty("value"), own.GetGenericArguments()[1]);
            case "or":
                return stated.GetProperty("items").EnumerateArray().Any(item => Fits(model, item, own));
            case "stringLiteral":
                return own == typeof(string);
            default:
                return false;
        }
    }
}
