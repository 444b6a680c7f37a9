using System.Reflection;
using NetArchTest.Rules;

namespace GroveSpec.Architecture.Tests;

public sealed class RoomTests
{
    public static TheoryData<string> Rooms => House.Rooms();

    [Theory]
    [MemberData(nameof(Rooms))]
    public void A_room_refers_only_to_the_rooms_it_may_know(string room)
    {
        var named = House.ProjectOf(room).Descendants("ProjectReference")
            .Select(reference => Path.GetFileNameWithoutExtension((string)reference.Attribute("Include")!)["GroveSpec.".Length..]);
        Assert.Empty(named.Except(House.Known[room]));
        var used = House.AssemblyOf(room).GetReferencedAssemblies()
            .Where(name => name.Name!.StartsWith("GroveSpec.", StringComparison.Ordinal))
            .Select(name => name.Name!["GroveSpec.".Length..]);
        Assert.Empty(used.Except(House.Known[room]));
    }

    [Fact]
    public void Every_room_is_known_here() => Assert.Equal(
        Directory.GetDirectories(Path.Combine(House.Root, "src")).Select(folder => Path.GetFileName(folder)["GroveSpec.".Length..]).Order(StringComparer.Ordinal),
        House.Known.Keys.Order(StringComparer.Ordinal));

    [Fact]
    public void Model_knows_nothing_but_dates() => Assert.DoesNotContain(
        House.AssemblyOf("Model").GetReferencedAssemblies().Select(name => name.Name!),
        name => name != "NodaTime" && !name.StartsWith("System", StringComparison.Ordinal));

    [Theory]
    [InlineData("Antlr4", "Syntax")]
    [InlineData("Ical.Net", "Publishing")]
    [InlineData("SkiaSharp", "Publishing")]
    [InlineData("Svg.Skia", "Publishing")]
    [InlineData("System.CommandLine", "Cli")]
    [InlineData("StreamJsonRpc", "LanguageServer")]
    public void A_library_is_known_in_one_room(string library, string room)
    {
        foreach (var other in House.Known.Keys.Where(other => other != room))
        {
            Assert.DoesNotContain(House.AssemblyOf(other).GetReferencedAssemblies(), name => name.Name!.StartsWith(library, StringComparison.Ordinal));
        }
    }

    [Fact]
    public void The_parser_generators_types_stay_in_parsing()
    {
        var result = Types.InAssembly(House.AssemblyOf("Syntax"))
            .That().DoNotResideInNamespace("GroveSpec.Syntax.Parsing")
            .ShouldNot().HaveDependencyOn("Antlr4").GetResult();
        Assert.True(result.IsSuccessful, string.Join(", ", result.FailingTypeNames ?? []));
    }

    [Fact]
    public void The_library_that_carries_messages_stays_in_transport()
    {
        var result = Types.InAssembly(House.AssemblyOf("LanguageServer"))
            .That().DoNotResideInNamespace("GroveSpec.LanguageServer.Transport")
            .ShouldNot().HaveDependencyOn("StreamJsonRpc").GetResult();
        Assert.True(result.IsSuccessful, string.Join(", ", result.FailingTypeNames ?? []));
    }

    [Fact]
    public void Editing_knows_no_protocol_and_no_json() => Assert.DoesNotContain(
        House.AssemblyOf("Editing").GetReferencedAssemblies().Select(name => name.Name!),
        name => name.StartsWith("System.Text.Json", StringComparison.Ordinal) || name is "GroveSpec.LanguageServer" or "StreamJsonRpc");

    [Fact]
    public void No_public_type_shows_the_parser_generator()
    {
        foreach (var type in House.AssemblyOf("Syntax").GetExportedTypes())
        {
            Assert.False(IsAntlr(type.BaseType), type.FullName);
            foreach (var member in type.GetMembers(BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly))
            {
                Assert.False(Shown(member).Any(IsAntlr), $"{type.FullName}.{member.Name}");
            }
        }
    }

    [Theory]
    [InlineData("Model")]
    [InlineData("Syntax")]
    [InlineData("Craft")]
    [InlineData("Checks")]
    [InlineData("Drawing")]
    [InlineData("Editing")]
    public void A_pure_room_reads_no_file_and_no_console_and_asks_nobody(string room)
    {
        foreach (var outside in new[] { "System.Console", "System.IO.File", "System.IO.FileInfo", "System.IO.Directory", "System.IO.FileStream", "System.Diagnostics.Process", "System.Net" })
        {
            // What the grammar's tool writes is not ours to judge; it takes the console as a default that is never used.
            var result = Types.InAssembly(House.AssemblyOf(room)).That().DoNotResideInNamespace("GroveSpec.Syntax.Parsing.Generated").ShouldNot().HaveDependencyOn(outside).GetResult();
            Assert.True(result.IsSuccessful, $"{outside}: {string.Join(", ", result.FailingTypeNames ?? [])}");
        }

        // Read in the sources, since the compiler itself asks the environment for the thread in every iterator.
        Assert.DoesNotContain(House.SourcesOf(room), source => source.Code.Contains("Environment.", StringComparison.Ordinal));
    }

    private static bool IsAntlr(Type? type) => type?.Namespace?.StartsWith("Antlr4", StringComparison.Ordinal) == true
        || (type?.IsGenericType == true && type.GetGenericArguments().Any(IsAntlr));

    private static IEnumerable<Type> Shown(MemberInfo member) => member switch
    {
        MethodInfo method => method.GetParameters().Select(parameter => parameter.ParameterType).Append(method.ReturnType),
        ConstructorInfo constructor => constructor.GetParameters().Select(parameter => parameter.ParameterType),
        PropertyInfo property => [property.PropertyType],
        FieldInfo field => [field.FieldType],
        _ => [],
    };
}
