namespace GroveSpec.LanguageServer.Protocol;

/// <summary>The form of a statement.</summary>
internal sealed record SignatureHelp(SignatureInformation[] Signatures, int? ActiveSignature = null, int? ActiveParameter = null);
