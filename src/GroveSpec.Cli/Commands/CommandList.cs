namespace GroveSpec.Cli.Commands;

/// <summary>The program's commands.</summary>
internal static class CommandList
{
    /// <summary>Their names, in the order in which help tells them.</summary>
    public static readonly string[] Names = ["check", "draw", "calendar", "wiring", "stand", "thin", "fronts", "nudge", "ground", "survey", "book", "tidy", "start", "language-server"];

    /// <summary>Makes the command of a name. Only the one that is called is ever made, because starting up must cost nothing.</summary>
    /// <param name="name">The name.</param>
    /// <returns>The command, or null where there is none of that name.</returns>
    public static GroveCommand? Make(string name) => name switch
    {
        "check" => new CheckCommand(),
        "draw" => new DrawCommand(),
        "calendar" => new CalendarCommand(),
        "wiring" => new WiringCommand(),
        "stand" => new StandCommand(),
        "thin" => new ThinCommand(),
        "nudge" => new NudgeCommand(),
        "ground" => new GroundCommand(),
        "fronts" => new FrontsCommand(),
        "survey" => new SurveyCommand(),
        "book" => new BookCommand(),
        "tidy" => new TidyCommand(),
        "start" => new StartCommand(),
        "language-server" => new LanguageServerCommand(),
        _ => null,
    };
}
