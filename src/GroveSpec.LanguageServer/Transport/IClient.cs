using System.Text.Json;
using System.Text.Json.Serialization.Metadata;

namespace GroveSpec.LanguageServer.Transport;

/// <summary>The editor at the other end.</summary>
internal interface IClient
{
    /// <summary>Tells it something and does not wait. Nothing happens when it is gone.</summary>
    /// <typeparam name="TParameters">What is told.</typeparam>
    /// <param name="method">The method.</param>
    /// <param name="parameters">What is told.</param>
    /// <param name="shape">How it is written as JSON.</param>
    void Notify<TParameters>(string method, TParameters parameters, JsonTypeInfo<TParameters> shape);

    /// <summary>Asks it for something, such as its settings, or to do something, such as to ask for its tokens again. A refusal is no error.</summary>
    /// <typeparam name="TParameters">What is asked with.</typeparam>
    /// <param name="method">The method.</param>
    /// <param name="parameters">What is asked with.</param>
    /// <param name="shape">How it is written as JSON; null for a request without parameters.</param>
    /// <returns>Its answer; null where it refused, is gone, or had nothing to say.</returns>
    Task<JsonElement?> AskAsync<TParameters>(string method, TParameters? parameters, JsonTypeInfo<TParameters>? shape);
}
