namespace GroveSpec.LanguageServer.Protocol;

/// <summary>What the editor is asked to do from now on.</summary>
internal sealed record RegistrationParams(Registration[] Registrations);
