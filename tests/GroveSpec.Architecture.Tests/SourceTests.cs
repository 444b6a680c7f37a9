using System.Text.RegularExpressions;

namespace GroveSpec.Architecture.Tests;

public sealed class SourceTests
{
    public static TheoryData<string> Rooms => House.Rooms();

    [Theory]
    [MemberData(nameof(Rooms))]
    public void A_files_namespace_is_its_folder(string room)
    {
        foreach (var source in House.SourcesOf(room).Where(source => source.Types.Count > 0))
        {
            Assert.True(source.Namespace == source.Folders, $"{source.Name} declares {source.Namespace}");
        }
    }

    [Theory]
    [MemberData(nameof(Rooms))]
    public void A_file_holds_one_type_and_is_named_after_it(string room)
    {
        foreach (var source in House.SourcesOf(room).Where(source => source.Types.Any(type => type.IsPublic)))
        {
            var shown = source.Types.Where(type => type.IsPublic).Select(type => type.Type).ToList();
            Assert.True(shown is [var only] && only == source.Stem, $"{source.Name} shows {string.Join(", ", shown)}");
        }

        foreach (var source in House.SourcesOf(room).Where(source => source.Types.Count > 0))
        {
            Assert.Contains(source.Stem, source.Types.Select(type => type.Type));
        }
    }

    [Theory]
    [MemberData(nameof(Rooms))]
    public void No_name_says_helper_manager_utils_or_common(string room)
    {
        foreach (var name in House.SourcesOf(room).SelectMany(source => source.Types.Select(type => type.Type).Append(source.Namespace ?? "")))
        {
            Assert.DoesNotMatch("Helper|Manager|Util|Common", name);
        }
    }

    [Theory]
    [MemberData(nameof(Rooms))]
    public void Today_is_an_argument_and_chance_has_a_seed(string room) => Forbid(
        room,
        @"\bDateTime(Offset)?\.(Now|UtcNow|Today)\b|\bSystemClock\b|\bTimeProvider\b|\bRandom\.Shared\b|\bnew Random\(\)|\bRandom \w+ = new\(\)|\bGuid\.NewGuid\b|\bRandomNumberGenerator\b|\bGetRandomFileName\b|\bTickCount");

    [Theory]
    [MemberData(nameof(Rooms))]
    public void No_culture_but_the_invariant_one(string room) => Forbid(
        room,
        @"\bCurrent(UI)?Culture(IgnoreCase)?\b|\bGetCultureInfo\b|\bnew CultureInfo\b|\.ToLower\(\)|\.ToUpper\(\)");

    [Theory]
    [InlineData("Model")]
    [InlineData("Syntax")]
    [InlineData("Craft")]
    [InlineData("Checks")]
    [InlineData("Binding")]
    [InlineData("Drawing")]
    public void No_order_is_left_to_a_hash(string room) => Forbid(room, @"\.AsParallel\(|\bParallel\.|\bHashCode\.Combine\([^)]*\) %|\.GetHashCode\(\) %");

    [Fact]
    public void A_rule_decides_and_leaves_the_geometry_to_craft()
    {
        foreach (var source in House.SourcesOf("Checks").Where(source => source.Folders == "GroveSpec.Checks.Rules"))
        {
            Assert.False(Regex.IsMatch(source.Code, @"\bMath\.(Sqrt|Sin|Cos|Tan|Atan2?|Asin|Acos|Hypot|Pow|Exp|Log)\b"), source.Name);
        }
    }

    [Fact]
    public void Nothing_is_left_to_do()
    {
        foreach (var source in House.Known.Keys.SelectMany(House.SourcesOf))
        {
            Assert.DoesNotMatch(@"\b(TODO|FIXME|HACK|XXX)\b|NotImplementedException", File.ReadAllText(Path.Combine(House.Root, source.Name)));
        }
    }

    private static void Forbid(string room, string pattern)
    {
        foreach (var source in House.SourcesOf(room))
        {
            var match = Regex.Match(source.Code, pattern);
            Assert.False(match.Success, $"{source.Name}: {match.Value}");
        }
    }
}
