using System.Text.Json;

namespace GroveSpec.LanguageServer.Protocol;

/// <summary>One thing it is asked to do.</summary>
internal sealed record Registration(string Id, string Method, JsonElement? RegisterOptions = null);
