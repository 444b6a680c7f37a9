namespace GroveSpec.LanguageServer.Protocol;

/// <summary>Whether several folders are understood.</summary>
internal sealed record WorkspaceFoldersServerCapabilities(bool? Supported = null, bool? ChangeNotifications = null);
