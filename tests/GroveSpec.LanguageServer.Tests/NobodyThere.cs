using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using GroveSpec.LanguageServer.Transport;

namespace GroveSpec.LanguageServer.Tests;

/// <summary>An editor that hears nothing and answers nothing.</summary>
internal sealed class NobodyThere : IClient
{
    public void Notify<TParameters>(string method, TParameters parameters, JsonTypeInfo<TParameters> shape)
    {
    }

    public Task<JsonElement?> AskAsync<TParameters>(string method, TParameters? parameters, JsonTypeInfo<TParameters>? shape) => Task.FromResult<JsonElement?>(null);
}
