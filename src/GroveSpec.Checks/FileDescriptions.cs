using System.Collections.Immutable;

namespace GroveSpec.Checks;

/// <summary>The checks that are made while a text is read and bound: what the language, and not the composition, asks of a file.</summary>
public static class FileDescriptions
{
    /// <summary>A line, or a part of one, could not be read.</summary>
    public static readonly CheckDescription NotUnderstood = new()
    {
        Name = "not-understood",
        Severity = Severity.Error,
        Meaning = "A line, or a part of one, could not be read.",
        Explanation = "Everything else in the file is still read, checked and drawn; only this statement is left out. The message says what was expected there.",
        Source = "the language",
    };

    /// <summary>A word is not one of those that can stand here, though it is close to one.</summary>
    public static readonly CheckDescription MisspeltWord = new()
    {
        Name = "misspelt-word",
        Severity = Severity.Error,
        Meaning = "A word is not one of those that can stand here, though it is close to one.",
        Explanation = "The statement, or the part of it that the word begins, is left out until the word is mended. The nearest known word is offered as a replacement.",
        Source = "the language",
    };

    /// <summary>A text in quotes or a block in braces has no end.</summary>
    public static readonly CheckDescription NotClosed = new()
    {
        Name = "not-closed",
        Severity = Severity.Error,
        Meaning = "A text in quotes or a block in braces has no end.",
        Explanation = "A text in quotes ends on the line on which it began, and a block ends with a brace of its own. The rest of the file is read as though the end stood where it was most likely meant.",
        Source = "the language",
    };

    /// <summary>The file holds characters that cannot be seen, that turn the direction of writing, or that are not UTF-8.</summary>
    public static readonly CheckDescription OddCharacter = new()
    {
        Name = "odd-character",
        Severity = Severity.Warning,
        Meaning = "The file holds characters that cannot be seen, that turn the direction of writing, or that are not UTF-8.",
        Explanation = "What a reader sees and what the file says can then differ. The characters are kept as they are; take them out, or save the file as UTF-8, unless they are meant.",
        Source = "the language",
    };

    /// <summary>A number is not written in plain decimal digits.</summary>
    public static readonly CheckDescription OddNumber = new()
    {
        Name = "odd-number",
        Severity = Severity.Error,
        Meaning = "A number is not written in plain decimal digits.",
        Explanation = "Numbers are written with the digits 0 to 9 and one decimal point, such as 12.5, so that every reader and every program takes them alike: no comma, no exponent, no fraction.",
        Source = "the language",
    };

    /// <summary>A file, a line or a word is beyond what is read.</summary>
    public static readonly CheckDescription TooLarge = new()
    {
        Name = "too-large",
        Severity = Severity.Error,
        Meaning = "A file, a line or a word is beyond what is read.",
        Explanation = "The limits are far above any planting a person keeps. They are there so that a damaged file cannot exhaust the machine.",
        Source = "the language",
    };

    /// <summary>A name is used that nothing in the file bears.</summary>
    public static readonly CheckDescription UnknownName = new()
    {
        Name = "unknown-name",
        Severity = Severity.Error,
        Meaning = "A name is used that nothing in the file bears.",
        Explanation = "Trunks, roles and tasks are known by the name in their own statement. The part that uses the name is kept as written but has no effect until the name is found.",
        Source = "the language",
    };

    /// <summary>No profile describes this species.</summary>
    public static readonly CheckDescription UnknownSpecies = new()
    {
        Name = "unknown-species",
        Severity = Severity.Hint,
        Meaning = "No profile describes this species.",
        Explanation = "Everything that does not depend on the species works as before. What does, such as the stages of the year, needs a profile: write one in the file or in one that it uses.",
        Source = "the language",
    };

    /// <summary>A tolerance, an accept or a mute names a check that does not exist.</summary>
    public static readonly CheckDescription UnknownCheck = new()
    {
        Name = "unknown-check",
        Severity = Severity.Warning,
        Meaning = "A tolerance, an accept or a mute names a check that does not exist.",
        Explanation = "It has no effect. The nearest known check is offered as a replacement.",
        Source = "the language",
    };

    /// <summary>Two trunks, roles, tasks or profiles bear the same name.</summary>
    public static readonly CheckDescription TwiceNamed = new()
    {
        Name = "twice-named",
        Severity = Severity.Error,
        Meaning = "Two trunks, roles, tasks or profiles bear the same name.",
        Explanation = "A name must mean one thing. The first holds and the second is left out. Names are the same when they look the same, however their accents are stored.",
        Source = "the language",
    };

    /// <summary>Two names differ only in capital and small letters.</summary>
    public static readonly CheckDescription SimilarNames = new()
    {
        Name = "similar-names",
        Severity = Severity.Hint,
        Meaning = "Two names differ only in capital and small letters.",
        Explanation = "They are different names and both hold, but a reader, or a spoken word, can hardly tell them apart.",
        Source = "the language",
    };

    /// <summary>The same thing is said twice where only once has a meaning.</summary>
    public static readonly CheckDescription SaidTwice = new()
    {
        Name = "said-twice",
        Severity = Severity.Error,
        Meaning = "The same thing is said twice where only once has a meaning.",
        Explanation = "The first holds and the second is left out, so that a line added below never changes what stands above it without a word.",
        Source = "the language",
    };

    /// <summary>A date is not in the calendar.</summary>
    public static readonly CheckDescription NoSuchDate = new()
    {
        Name = "no-such-date",
        Severity = Severity.Error,
        Meaning = "A date is not in the calendar.",
        Explanation = "The fact is left out until the date is mended. The last day of the month that was written is offered.",
        Source = "the Gregorian calendar",
    };

    /// <summary>A unit is not one of those that can stand here.</summary>
    public static readonly CheckDescription OddUnit = new()
    {
        Name = "odd-unit",
        Severity = Severity.Error,
        Meaning = "A unit is not one of those that can stand here.",
        Explanation = "Lengths are written in mm, cm, m, in or ft; angles and bearings in deg; parts in %; spans of time in days, weeks, months or years; temperatures in C or F. Small and capital letters matter. A unit that can only mean one thing is taken so while the finding stands.",
        Source = "the language",
    };

    /// <summary>A value is impossible, or beyond what is taken.</summary>
    public static readonly CheckDescription OutOfRange = new()
    {
        Name = "out-of-range",
        Severity = Severity.Error,
        Meaning = "A value is impossible, or beyond what is taken.",
        Explanation = "The fact is left out until the value is mended. The message gives the range.",
        Source = "the language",
    };

    /// <summary>Two facts about the same thing cannot both be true.</summary>
    public static readonly CheckDescription Contradiction = new()
    {
        Name = "contradiction",
        Severity = Severity.Error,
        Meaning = "Two facts about the same thing cannot both be true.",
        Explanation = "The first of them holds where one must. Say which is right by taking the other out.",
        Source = "the language",
    };

    /// <summary>A span of time or length ends before it begins.</summary>
    public static readonly CheckDescription EndsBeforeStart = new()
    {
        Name = "ends-before-start",
        Severity = Severity.Error,
        Meaning = "A span of time or length ends before it begins.",
        Explanation = "Nothing can happen in it. Turn the two ends round, or mend the one that is wrong.",
        Source = "the language",
    };

    /// <summary>The file has trunks but no planting statement.</summary>
    public static readonly CheckDescription NoPlanting = new()
    {
        Name = "no-planting",
        Severity = Severity.Error,
        Meaning = "The file has trunks but no planting statement.",
        Explanation = "The statement gives the planting its name, by which drawings, calendars and lists call it.",
        Source = "the language",
    };

    /// <summary>The same finding is accepted twice.</summary>
    public static readonly CheckDescription TwiceAccepted = new()
    {
        Name = "twice-accepted",
        Severity = Severity.Hint,
        Meaning = "The same finding is accepted twice.",
        Explanation = "One accept is enough; two reasons for the same thing make a reader wonder which holds.",
        Source = "the language",
    };

    /// <summary>An accept or a mute gives no reason.</summary>
    public static readonly CheckDescription EmptyReason = new()
    {
        Name = "empty-reason",
        Severity = Severity.Warning,
        Meaning = "An accept or a mute gives no reason.",
        Explanation = "It works, but in a year nobody knows whether it still should. Write a few words for whoever reads it next.",
        Source = "common practice",
    };

    /// <summary>A used file does not lie below the folder of the file that uses it.</summary>
    public static readonly CheckDescription UseOutsideFolder = new()
    {
        Name = "use-outside-folder",
        Severity = Severity.Error,
        Meaning = "A used file does not lie below the folder of the file that uses it.",
        Explanation = "A planting reads only what lies beside or below it, so that a file from elsewhere can be opened without fear. Copy the used file there.",
        Source = "the language",
    };

    /// <summary>A used file cannot be found or read.</summary>
    public static readonly CheckDescription UseNotFound = new()
    {
        Name = "use-not-found",
        Severity = Severity.Error,
        Meaning = "A used file cannot be found or read.",
        Explanation = "Roles, tolerances and profiles from it are missing, so further findings may follow from this one.",
        Source = "the language",
    };

    /// <summary>Files use each other in a circle, or one uses itself.</summary>
    public static readonly CheckDescription UseCircle = new()
    {
        Name = "use-circle",
        Severity = Severity.Error,
        Meaning = "Files use each other in a circle, or one uses itself.",
        Explanation = "The file that closes the circle is not read a second time.",
        Source = "the language",
    };

    /// <summary>A used file is too large, or the used files are together.</summary>
    public static readonly CheckDescription UseTooLarge = new()
    {
        Name = "use-too-large",
        Severity = Severity.Error,
        Meaning = "A used file is too large, or the used files are together.",
        Explanation = "Files of roles, tolerances and profiles are a few kilobytes. This is most likely another kind of file.",
        Source = "the language",
    };

    /// <summary>Used files use further files beyond what is followed.</summary>
    public static readonly CheckDescription UseTooDeep = new()
    {
        Name = "use-too-deep",
        Severity = Severity.Error,
        Meaning = "Used files use further files beyond what is followed.",
        Explanation = "Files are followed 32 deep and 256 times in all, which is far more than anyone can keep in mind.",
        Source = "the language",
    };

    /// <summary>A used file holds something that is not shared.</summary>
    public static readonly CheckDescription NotShared = new()
    {
        Name = "not-shared",
        Severity = Severity.Warning,
        Meaning = "A used file holds something that is not shared.",
        Explanation = "Only roles, tolerances and species profiles are taken from a used file; trunks, tasks and readings belong to one planting. The rest of the used file is taken.",
        Source = "the language",
    };

    /// <summary>All of them, sorted by name.</summary>
    public static ImmutableArray<CheckDescription> All { get; } =
    [
        Contradiction,
        EmptyReason,
        EndsBeforeStart,
        MisspeltWord,
        NoPlanting,
        NoSuchDate,
        NotClosed,
        NotShared,
        NotUnderstood,
        OddCharacter,
        OddNumber,
        OddUnit,
        OutOfRange,
        SaidTwice,
        SimilarNames,
        TooLarge,
        TwiceAccepted,
        TwiceNamed,
        UnknownCheck,
        UnknownName,
        UnknownSpecies,
        UseCircle,
        UseNotFound,
        UseOutsideFolder,
        UseTooDeep,
        UseTooLarge,
    ];
}
