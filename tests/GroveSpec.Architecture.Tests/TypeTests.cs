using System.Collections;
using System.Reflection;
using System.Runtime.CompilerServices;

namespace GroveSpec.Architecture.Tests;

public sealed class TypeTests
{
    public static TheoryData<string> Rooms => House.Rooms();

    [Theory]
    [MemberData(nameof(Rooms))]
    public void A_class_is_sealed_or_made_to_be_inherited(string room)
    {
        var types = House.AssemblyOf(room).GetTypes();
        var open = types.Where(type => type is { IsClass: true, IsSealed: false, IsAbstract: false, IsNested: false }
            && type.GetCustomAttribute<CompilerGeneratedAttribute>() is null
            && type.Namespace?.EndsWith(".Generated", StringComparison.Ordinal) != true
            && type.Namespace?.StartsWith("GroveSpec", StringComparison.Ordinal) == true
            && !types.Any(other => other.BaseType == type));
        Assert.Empty(open.Select(type => type.FullName));
    }

    [Fact]
    public void The_model_never_changes()
    {
        foreach (var type in House.AssemblyOf("Model").GetExportedTypes().Where(type => !type.IsEnum))
        {
            foreach (var property in type.GetProperties(BindingFlags.Public | BindingFlags.Instance | BindingFlags.DeclaredOnly))
            {
                var isFixed = property.SetMethod is not { IsPublic: true } setter
                    || setter.ReturnParameter.GetRequiredCustomModifiers().Contains(typeof(IsExternalInit));
                Assert.True(isFixed, $"{type.FullName}.{property.Name} can be set");
                Assert.False(IsMutable(property.PropertyType), $"{type.FullName}.{property.Name} can be changed");
            }

            Assert.DoesNotContain(type.GetFields(BindingFlags.Public | BindingFlags.Instance), field => !field.IsInitOnly);
        }
    }

    [Fact]
    public void A_drawing_sees_no_place_in_a_text() => Assert.DoesNotContain(
        House.SourcesOf("Drawing"),
        source => source.Code.Contains("SourceSpan", StringComparison.Ordinal) || source.Code.Contains("IOriginTable", StringComparison.Ordinal));

    private static bool IsMutable(Type type) => type.IsArray
        || (typeof(IList).IsAssignableFrom(type) && !type.IsValueType)
        || typeof(IDictionary).IsAssignableFrom(type);
}
