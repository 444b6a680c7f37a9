using GroveSpec.Binding;
using GroveSpec.Checks.Fronts;
using GroveSpec.Checks.Ground;
using GroveSpec.Checks.Nudging;
using GroveSpec.Checks.Sentences;
using GroveSpec.Checks.Standing;
using GroveSpec.Checks.Surveying;
using GroveSpec.Craft.Composition;
using GroveSpec.Craft.Stand;
using GroveSpec.Craft.Survey;
using GroveSpec.Drawing;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.States;

namespace GroveSpec.Publishing.Book;

/// <summary>
/// What may still be decided, where the page can help: the smallest moves where the composition has findings, other fronts where the
/// view has, ground for a trunk that is planned and has no place, what the tape says where readings place a trunk, and how naturally
/// it stands. What a grower has to be asked for first, such as how many trunks are to stay, is not guessed at.
/// </summary>
internal sealed class DecisionsSection
{
    /// <summary>More trunks than this are told how naturally they stand, and nothing is searched for on paper: common practice ends long before, and the search takes long.</summary>
    private const int MostSearched = 30;
    private const int LeastDescribed = 3;

    private readonly HtmlText page;
    private readonly Assessment planting;
    private readonly UnitSystem units;
    private readonly Func<string, string, DrawingOptions> options;
    private readonly Action<string> draw;
    private bool isOpen;

    /// <summary>Begins the section.</summary>
    /// <param name="page">Where to.</param>
    /// <param name="planting">What is known of the planting.</param>
    /// <param name="units">The units to speak in.</param>
    /// <param name="options">How a plate is drawn, by a word for its ids and its heading.</param>
    /// <param name="draw">Writes a plate.</param>
    public DecisionsSection(HtmlText page, Assessment planting, UnitSystem units, Func<string, string, DrawingOptions> options, Action<string> draw) =>
        (this.page, this.planting, this.units, this.options, this.draw) = (page, planting, units, options, draw);

    /// <summary>Writes what helps; nothing at all where nothing does.</summary>
    public void Write()
    {
        WriteSurvey();
        if (planting.State.Standing.Count() <= MostSearched)
        {
            WriteMoves();
            WriteFronts();
            WriteGround();
        }

        WriteStand();
        if (isOpen)
        {
            page.Raw("</section>\n");
        }
    }

    private void WriteSurvey()
    {
        if (planting.Planting.Tapes.IsEmpty || planting.Planting.Trunks.All(trunk => trunk.At is not null))
        {
            return;
        }

        var survey = TapeSurvey.Of(planting.State);
        Begin("What the tape says", SurveyPlate.Draw(planting.State, survey, options("tape-", "By the tape")));
        Tell(SurveySentences.Places(survey, units));
        Tell(SurveyWords.Notes(survey, units));
        page.Raw("</article>\n");
    }

    private void WriteMoves()
    {
        if (!planting.Findings.Any(finding => finding.Check.IsComposition))
        {
            return;
        }

        var answer = Nudging.Find(planting.ToContext(), planting.Tree, NudgeWish.Usual(units));
        if (answer.Suggestions.FirstOrDefault() is not { } best)
        {
            return;
        }

        Begin("What to move a little", NudgePlate.Draw(planting.State, best, options("moves-", "As it then stands")));
        Tell([best.Why, .. best.Moves.Select(move => NudgeWords.Order(move, units)), .. NudgeSentences.Left(best), .. NudgeSentences.Remarks(answer)]);
        page.Raw("</article>\n");
    }

    private void WriteFronts()
    {
        var answer = BestFronts.Find(planting.ToContext(), planting.Tree);
        if (answer.Now is not { Found: > 0 } now || answer.Suggestions.FirstOrDefault() is not { } best || best.Front.Found >= now.Found)
        {
            return;
        }

        Begin("Which side is the front", FrontsPlate.Draw(planting.State, answer, options("fronts-", "From other sides")));
        foreach (var (suggestion, place) in answer.Suggestions.Select((suggestion, place) => (suggestion, place + 1)))
        {
            Tell([$"{place}. {FrontSentences.From(suggestion.Front)}: {suggestion.Why} {suggestion.Holds}"]);
        }

        page.Raw("</article>\n");
    }

    private void WriteGround()
    {
        if (planting.State.Trunks.FirstOrDefault(trunk => trunk is { Presence: Presence.Planned, Place: null }) is not { } planned)
        {
            return;
        }

        var wish = new GroundWish(planned.Diameter is null ? NewcomerSizes.UsualDiameter : null, null, planned.Name);
        var answer = GroundReview.Find(planting.ToContext(), planting.Tree, wish);
        if (answer.Obstacle is not null)
        {
            return;
        }

        Begin($"Where {planned.Name} goes", GroundPlate.Draw(planting.State, answer, options("ground-", "Free ground")));
        Tell([.. GroundSentences.Sum(answer, units), .. answer.Spots.Select((spot, place) => $"{place + 1}. {GroundSentences.Spot(spot, units)}"), .. GroundSentences.Notes(answer)]);
        page.Raw("</article>\n");
    }

    private void WriteStand()
    {
        var described = StandDescription.Of(planting.State);
        if (described.Stems.Length < LeastDescribed)
        {
            return;
        }

        Begin("How natural it stands", StandPlate.Draw(planting.State, described, options("stand-", "Beside chance")));
        Tell(StandWords.Sentences(described, units));
        page.Raw("</article>\n");
    }

    private void Begin(string heading, string plate)
    {
        if (!isOpen)
        {
            page.Raw("<section>\n").Element("h2", "What may still be decided");
            isOpen = true;
        }

        page.Raw("<article class=\"decision\">\n").Raw("<h3>").Own(heading).Raw("</h3>\n");
        draw(plate);
    }

    private void Tell(IEnumerable<string> sentences)
    {
        foreach (var sentence in sentences)
        {
            page.Raw("<p>").Text(sentence).Raw("</p>\n");
        }
    }
}
