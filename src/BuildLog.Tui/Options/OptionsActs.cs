using BuildLog.Data;
using BuildLog.Data.Components;
using BuildLog.Data.Hunting;
using BuildLog.Data.Plans;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Options;
using BuildLog.Gearing.Quantities;
using BuildLog.Sheet.Papers;
using BuildLog.Tui.Bench;
using BuildLog.Tui.Forms;
using BuildLog.Tui.Hunting;
using BuildLog.Tui.Papers;
using BuildLog.Tui.Plans;
using BuildLog.Tui.Sheets;
using BuildLog.Tui.Shell;
using BuildLog.Tui.Workbench;
using BuildLog.Tui.YardCards;

namespace BuildLog.Tui.Options;

/// <summary>What the keys of the options page do to the record.</summary>
/// <param name="shop">The record.</param>
/// <param name="clock">Says which day it is.</param>
/// <param name="forNow">The units to show, and what is searched.</param>
internal sealed class OptionsActs(Shop shop, TimeProvider clock, ForNow forNow) : IOptionsActs
{
    private const int TableWidth = 70;

    private VehicleOnBench? bench;
    private WaysOut? found;

    private DateOnly Today => clock.Today();

    public Task<OptionsModel> Find(long vehicleId, IProgress<double> progress, CancellationToken cancel)
    {
        if (bench?.Vehicle.Id != vehicleId) (bench, found) = (null, null);
        try
        {
            var read = VehicleOnBench.Read(shop, shop.FindVehicle(vehicleId), Today);
            bench ??= read;
            var tried = new PartsToTry(shop, read, forNow.Search, Today);
            var (parts, unclear) = (tried.All(), tried.Unclear);
            var rejected = RejectedPlans.Of(shop, read);
            var (searched, units) = (forNow.Search.InWords, forNow.Units);
            return Task.Run(
                () =>
                {
                    var answer = Parsed.From(() => WaysOut.Of(read, parts, unclear, rejected, progress, cancel));
                    (bench, found) = (read, null);
                    if (!answer.Understood(out var ways)) return new OptionsModel([], Missing: answer.Refusal!.Message);

                    found = ways;
                    return OptionRows.Of(ways, searched, units);
                },
                cancel);
        }
        catch (RefusedException refused)
        {
            return Task.FromResult(new OptionsModel([], Missing: refused.Refusal.Message));
        }
    }

    public string? Choose(IWorkbenchView view) => view.Fill(SearchForm.For(forNow.Search)) ? Spoken($"{forNow.Search.InWords} It stays so until you quit.") : null;

    public string? Want(IWorkbenchView view, int place)
    {
        if (ChosenPart(view, place, Spoken("Hunt which part?")) is not { } part) return null;

        var (option, position) = part;
        var hunted = new HuntedPart(bench!, With(option), position, NameAt(option, position)) { Plan = option.Changes > 1 ? PlanOf(option) : null, Alike = OptionWords.GearedAlike(option) ?? "" };
        if (hunted.Window is not null && hunted.Already(shop) is { } already) return Spoken($"Hunted already, see the page Wanted: {already.Title}.");

        var wanted = hunted.Hunt(shop);
        return string.Join(' ', ((string[])
        [
            hunted.Window is { } window
                ? Spoken($"Hunted now, see the page Wanted: {position.InWords()}, {WindowWords.Of(window, forNow.Units)}.")
                : Spoken($"Hunted now, see the page Wanted: {wanted.Title}. No window could be said."),
            .. hunted.Plan is { } plan ? (string[])[Spoken($"All of it is kept as the plan {plan.Name}: this part is judged with the others.")] : [],
        ]));
    }

    public string? Card(IWorkbenchView view, int place)
    {
        if (ChosenPart(view, place, Spoken("A card for which part?"), position => CardPartWords.IsThereFor(WantedWindows.Kind(position))) is not { } part) return null;

        var (option, position) = part;

        // It is the card of the hunt, with what the hunt is limited to, where that is judged beside the same parts.
        long? beside = option.Changes > 1 ? PlanOf(option).Id : null;
        var hunts = HuntedPlace.Hunts(shop, bench!, position).Where(hunt => hunt.PlanId == beside).ToList();
        var rest = With(option);
        return new CardActs(shop, clock, forNow.Units).Run(view, rest, WantedWindows.Kind(position), hunts is [var only] ? HuntBench.Of(shop, bench!, only) with { Bench = rest } : null);
    }

    public string? Plan(IWorkbenchView view, int place)
    {
        if (At(place) is not { } option) return null;

        var form = PlanForm.For(Spoken($"A plan for {bench!.Vehicle.Name}"), OptionWords.Short(option), shop, bench.Vehicle, OptionChanges.Of(option), Today);
        return view.Fill(form) ? Spoken($"Kept as a plan: {shop.Plans(bench.Vehicle)[0].Name}.") : null;
    }

    public string? Beside(IWorkbenchView view, IReadOnlyList<int> places)
        => bench is null
            ? null
            : SideBySide(view, bench, NamedChanges.Beside(bench, places.Select(At).OfType<Option>(), found?.Currency));

    public string? TradeOff(IWorkbenchView view, long vehicleId)
    {
        var about = bench ?? VehicleOnBench.Read(shop, shop.FindVehicle(vehicleId), Today);
        if (view.Choose(Spoken($"What about {about.Vehicle.Name}?"), [.. Tui.Options.TradeOff.All.Select(each => new ChoiceOption(each.Changes, each.Says))]) is not { } changes) return null;

        try
        {
            return SideBySide(view, about, NamedChanges.Beside(about, changes, () => found));
        }
        catch (RefusedException refused)
        {
            view.Say(refused.Refusal.Sentence);
            return null;
        }
    }

    public void Map(IWorkbenchView view)
    {
        if (bench is null) return;

        var about = bench;
        if (MapWords.Refuse(about.Driveline) is { } refusal) view.Say(refusal.Sentence);
        else view.Tell(Spoken("Axle against tyre"), width => [.. MapWords.Of(about, forNow.Units, width).LinesAt(width).Select(line => TextLine.Of(line))]);
    }

    private string? SideBySide(IWorkbenchView view, VehicleOnBench about, OptionComparison compared)
    {
        if (!view.TellOrPrint(Spoken("Side by side"), ComparisonWords.Table(compared, forNow.Units, TableWidth))) return null;

        string? said = null;
        var form = PrintForm.For(
            Spoken("Print the comparison"), "Options", SheetFile.Usual(about.Vehicle, "options"), PrintForm.WholePages,
            (paper, path) => PaperWriter.WriteFile(ComparisonWords.Page(about, compared, forNow.Units, MapWords.IfKnown(about, forNow.Units), paper, clock.GetLocalNow()), path),
            outcome => said = outcome);
        return view.Fill(form) ? said : null;
    }

    private VehicleOnBench With(Option option) => bench! with { Fitted = bench.Fitted with { Driveline = option.Driveline }, Findings = option.Findings };

    // The one that is kept of these parts already, or a new one.
    private Plan PlanOf(Option option)
    {
        var changes = OptionChanges.Of(option);
        return shop.Plans(bench!.Vehicle).FirstOrDefault(plan => plan.State != PlanState.Rejected && plan.Wishes.Count == 0 && plan.Changes.SequenceEqual(changes.OrderBy(change => change.Position)))
            ?? new Plan(bench.Vehicle) { Name = PlanName.Free(shop, bench.Vehicle, OptionWords.Short(option)), Date = Today, Changes = changes, State = PlanState.Kept };
    }

    private Option? At(int place) => found?.InOrder.ElementAtOrDefault(place - 1);

    // Asks which one where several would be changed, and something can be done with more than one of them.
    private (Option Option, Position Position)? ChosenPart(IWorkbenchView view, int place, string title, Func<Position, bool>? isFor = null)
    {
        if (At(place) is not { } option) return null;

        var positions = OptionChanges.Positions(option).Where(position => position != Position.Overdrive || option.Overdrive.Part is not null).ToList();
        if (positions.Count == 0)
        {
            view.Say(Spoken("This way out takes a part off and needs none."));
            return null;
        }

        if (isFor is not null && positions.Any(isFor)) positions = [.. positions.Where(isFor)];
        var chosen = positions.Count == 1 ? positions[0].ToString() : view.Choose(title, [.. positions.Select(position => new ChoiceOption(position.ToString(), $"{position.InWords()}: {NameAt(option, position)}"))]);
        return Enum.TryParse<Position>(chosen, out var at) ? (option, at) : null;
    }

    private static string NameAt(Option option, Position position) => position switch
    {
        Position.Transmission => option.Gearbox.Name,
        Position.Overdrive => option.Overdrive.Name,
        Position.Tyres => option.Tyres.Name,
        Position.Speedometer => OptionWords.Dial(option)!,
        _ => option.Axle.Name,
    };
}
