using System.Text.Json;

namespace GroveSpec.LanguageServer.Protocol;

/// <summary>A note above a line.</summary>
internal sealed record CodeLens(Range Range, Command? Command = null, JsonElement? Data = null);
