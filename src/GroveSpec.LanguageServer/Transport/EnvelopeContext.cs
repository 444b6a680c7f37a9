using System.Text.Json;
using System.Text.Json.Serialization;
using StreamJsonRpc;
using StreamJsonRpc.Protocol;

namespace GroveSpec.LanguageServer.Transport;

/// <summary>The shapes that cross the library: values that are JSON already, and what it says of errors.</summary>
[JsonSerializable(typeof(JsonElement))]
[JsonSerializable(typeof(JsonElement?))]
[JsonSerializable(typeof(CommonErrorData))]
[JsonSerializable(typeof(RequestId))]
[JsonSerializable(typeof(string))]
[JsonSerializable(typeof(int))]
[JsonSerializable(typeof(long))]
internal sealed partial class EnvelopeContext : JsonSerializerContext;
