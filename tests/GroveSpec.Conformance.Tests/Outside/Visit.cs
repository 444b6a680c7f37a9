namespace GroveSpec.Conformance.Tests.Outside;

/// <summary>What came of opening a page.</summary>
/// <param name="Page">The page as it stood once loaded.</param>
/// <param name="Console">What its console said.</param>
internal sealed record Visit(string Page, IReadOnlyList<string> Console);
