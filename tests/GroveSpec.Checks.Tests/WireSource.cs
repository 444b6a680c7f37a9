namespace GroveSpec.Checks.Tests;

/// <summary>Sources for the checks of wire: a trunk A that is 30 mm thick at the soil and 300 mm tall, wired in autumn, looked over and unwired.</summary>
internal static class WireSource
{
    /// <summary>A source.</summary>
    /// <param name="details">What is said of the wire.</param>
    /// <param name="done">What is said of the wire's being done.</param>
    /// <param name="off">What is said of its removal's being done.</param>
    /// <param name="before">Statements before the tasks.</param>
    /// <returns>The text.</returns>
    public static string Of(string details, string done = "", string off = "", string before = "") => CareSource.Of("carpinus-betulus", $"""
        {before}
        task W wire on A from 2027-09-01 to 2027-09-10 {details} {done}
        task L look-over of W every 2 weeks until U
        task U unwire of W 6 to 8 weeks after W {off}
        """);
}
