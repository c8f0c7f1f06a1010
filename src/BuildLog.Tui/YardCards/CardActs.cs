using BuildLog.Data;
using BuildLog.Data.Hunting;
using BuildLog.Gearing.Quantities;
using BuildLog.Sheet.Content;
using BuildLog.Sheet.Papers;
using BuildLog.Tui.Bench;
using BuildLog.Tui.Forms;
using BuildLog.Tui.Hunting;
using BuildLog.Tui.Papers;
using BuildLog.Tui.Sheets;
using BuildLog.Tui.Workbench;

namespace BuildLog.Tui.YardCards;

/// <summary>Shows the yard card of a part, and puts it on paper where that is asked for.</summary>
internal sealed class CardActs(Shop shop, TimeProvider clock, UnitSystem units)
{
    private const string Help = "Wanted";

    /// <param name="view">Shows and asks.</param>
    /// <param name="bench">The vehicle, as it would be around the part.</param>
    /// <param name="kind">What is looked for.</param>
    /// <param name="hunted">The hunt it is for, judged on that vehicle; null where none is hunted yet.</param>
    /// <returns>What was written, or null if nothing was.</returns>
    public string? Run(IWorkbenchView view, VehicleOnBench bench, WantedKind kind, HuntBench? hunted = null)
    {
        if (Enum.GetValues<CardPart>().Where(each => each.IsFor(kind)).ToList() is not [var part])
        {
            view.Say(Spoken($"There is no card for {kind.InWords()}: for an axle, a gearbox, an overdrive and tyres there is one."));
            return null;
        }

        try
        {
            var card = CardOfVehicle.Read(shop, bench, part, units, hunted);
            var text = CardText.Of(card.Content(Paper.A6, clock.GetLocalNow()));
            string? said = null;
            return view.TellOrPrint(Spoken($"Yard card: {part.InWords()}"), text, Help) && view.Fill(Form(card, outcome => said = outcome)) ? said : null;
        }
        catch (RefusedException refused)
        {
            view.Say(refused.Refusal.Sentence);
            return null;
        }
    }

    private Form Form(CardOfVehicle card, Action<string> said) => PrintForm.For(
        Spoken("Print the yard card"), Help, SheetFile.Usual(card.Bench.Vehicle, $"{card.Part.Word()}-card"), PrintForm.Pocket,
        (paper, path) => PaperWriter.WriteFile(card.Content(paper, clock.GetLocalNow()), path), said);
}
