namespace GroveSpec.Cli.Reports;

/// <summary>By what a calendar is told.</summary>
internal enum AgendaOrder
{
    /// <summary>By how near the work is.</summary>
    Day,

    /// <summary>By the trunk it is done to.</summary>
    Trunk,

    /// <summary>By the kind of work.</summary>
    Kind,
}
