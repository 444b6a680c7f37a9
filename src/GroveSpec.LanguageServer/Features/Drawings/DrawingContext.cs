using System.Text.Json.Serialization;

namespace GroveSpec.LanguageServer.Features.Drawings;

/// <summary>How the messages about drawings are read and written. They are GroveSpec's own, not the protocol's.</summary>
[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
    RespectNullableAnnotations = true,
    RespectRequiredConstructorParameters = true)]
[JsonSerializable(typeof(DrawParams))]
[JsonSerializable(typeof(DrawResult))]
[JsonSerializable(typeof(GuidesParams))]
[JsonSerializable(typeof(GuidesResult))]
[JsonSerializable(typeof(DragParams))]
[JsonSerializable(typeof(StepParams))]
[JsonSerializable(typeof(DragResult))]
[JsonSerializable(typeof(TaskDragParams))]
[JsonSerializable(typeof(TaskStepParams))]
internal sealed partial class DrawingContext : JsonSerializerContext;
