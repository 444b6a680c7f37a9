using System.Text.Json.Serialization;

namespace GroveSpec.LanguageServer.Features.Deciding;

/// <summary>How the messages about decisions are read and written. They are GroveSpec's own, not the protocol's.</summary>
[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
    RespectNullableAnnotations = true,
    RespectRequiredConstructorParameters = true)]
[JsonSerializable(typeof(DecideParams))]
[JsonSerializable(typeof(DecideResult))]
internal sealed partial class DecidingContext : JsonSerializerContext;
