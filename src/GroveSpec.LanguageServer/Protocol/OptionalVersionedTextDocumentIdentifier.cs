using System.Text.Json.Serialization;

namespace GroveSpec.LanguageServer.Protocol;

/// <summary>Which document; the version is null for one that lies on the disk only.</summary>
internal sealed record OptionalVersionedTextDocumentIdentifier(string Uri, [property: JsonIgnore(Condition = JsonIgnoreCondition.Never)] int? Version);
