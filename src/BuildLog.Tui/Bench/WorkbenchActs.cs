using System.Collections.Concurrent;
using BuildLog.Data;
using BuildLog.Data.Components;
using BuildLog.Data.Goals;
using BuildLog.Data.Sessions;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Quantities;
using BuildLog.Tui.Fitments;
using BuildLog.Tui.Forms;
using BuildLog.Tui.Goals;
using BuildLog.Tui.Measurements;
using BuildLog.Tui.Options;
using BuildLog.Tui.Removing;
using BuildLog.Tui.Search;
using BuildLog.Tui.Sheets;
using BuildLog.Tui.Vehicles;
using BuildLog.Tui.WhatNow;
using BuildLog.Tui.Workbench;

namespace BuildLog.Tui.Bench;

/// <summary>What the workbench's keys do to the record: ask, store, show what the record now says.</summary>
/// <param name="shop">The record.</param>
/// <param name="clock">Says which day it is.</param>
/// <param name="units">The units to begin with.</param>
/// <param name="banner">One line that explains a special state of the shop; null for none.</param>
/// <param name="pad">Where unsaved counts are kept.</param>
/// <param name="forNow">What is chosen on the bench without being stored, shared with its pages.</param>
public sealed class WorkbenchActs(Shop shop, TimeProvider clock, UnitSystem units, string? banner = null, Scratchpad? pad = null, ForNow? forNow = null) : IWorkbenchActs
{
    private readonly TallyActs tallies = new(pad ?? new Scratchpad());
    private readonly ForNow forNow = In(units, forNow ?? new());
    private readonly ConcurrentDictionary<long, VerdictCounts> judged = new(); // as far as they have been read
    private int revision;
    private VehicleOnBench? onBench; // as last shown

    private static ForNow In(UnitSystem units, ForNow forNow)
    {
        forNow.Units = units;
        return forNow;
    }

    private DateOnly Today => clock.Today();

    public WorkbenchModel Open() => Model(null);

    public WorkbenchModel OpenList() => new(Rows(shop.Vehicles()), null, banner, revision);

    public IEnumerable<WhatNowRow> WhatNow()
    {
        var deadlines = shop.Deadlines();
        foreach (var vehicle in shop.Vehicles())
        {
            var row = WhatNowWords.Of(shop, vehicle, deadlines, Today, forNow.Units);
            judged[vehicle.Id] = row.Counts;
            yield return row;
        }
    }

    public void ChooseVehicle(IWorkbenchView view, long vehicleId) => view.Show(Model(vehicleId));

    public void ShowAgain(IWorkbenchView view, string message) => ShowAndSay(view, view.Model.Chosen?.Id, message);

    public IReadOnlyList<FoundPlace> Find(string typed)
    {
        var found = shop.Find(typed);
        if (found.Count == 0) return [];

        var vehicles = shop.Vehicles();
        var parts = shop.Parts();
        var fitted = parts.Where(place => place.Fitment is not null).ToLookup(place => place.Component.Name, place => place.Fitment!);
        return [.. found.Select(Place)];

        FoundPlace Place(Data.Search.Found each)
        {
            var onIt = vehicles.FirstOrDefault(vehicle => vehicle.Name == each.Vehicle)?.Id;
            var fitment = fitted[each.Part ?? each.Title].FirstOrDefault(fitment => onIt is null || fitment.VehicleId == onIt);
            return FoundPlace.Of(each, onIt ?? fitment?.VehicleId ?? LastWith(each), fitment?.Position.ToString());
        }

        // Papers stay with every vehicle that a part was ever on.
        long? LastWith(Data.Search.Found each)
            => each is { Kind: FoundPlace.Attached, Part: { } name } && parts.FirstOrDefault(place => place.Component.Name == name) is { } shelf
                ? shop.LifeOf(shelf.Component).Service.LastOrDefault()?.Fitment.VehicleId
                : null;
    }

    public IReadOnlyList<string> Card(long vehicleId, DrivelineBox box)
        => Enum.TryParse<Position>(box.Position, out var position) ? PartCard.Of(shop, shop.FindVehicle(vehicleId), position, Today, forNow.Units) : [];

    public void Undo(IWorkbenchView view) => GoThrough(view, () => Told(Spoken("Taken back"), shop.Undo()));

    public void Redo(IWorkbenchView view) => GoThrough(view, () => Told(Spoken("Done again"), shop.Redo()));

    public void SwitchUnits(IWorkbenchView view)
    {
        forNow.Units = forNow.Units == UnitSystem.Metric ? UnitSystem.Imperial : UnitSystem.Metric;
        view.Show(Model(view.Model.Chosen?.Id));
        view.Say(forNow.Units == UnitSystem.Metric ? Spoken("Lengths in metres, speeds in km/h.") : Spoken("Lengths in inches, speeds in mph."));
    }

    public void NewVehicle(IWorkbenchView view)
    {
        Vehicle? added = null;
        var form = VehicleForm.For(new Vehicle(), edit => added = shop.Add(new Vehicle(), edit), OtherCalled);
        if (view.Fill(form) && added is not null) ShowAndSay(view, added.Id, Spoken($"{added.Name} is in the shop. Next: fit its parts with f."));
    }

    public void EditVehicle(IWorkbenchView view)
    {
        if (Chosen(view) is not { } vehicle) return;
        if (view.Fill(VehicleForm.For(vehicle, edit => shop.Change(vehicle, edit), name => OtherCalled(name) is { } other && other.Id != vehicle.Id ? other : null))) ShowAndSay(view, vehicle.Id, Spoken("Changed."));
    }

    public void FitPart(IWorkbenchView view, string? position)
    {
        if (Chosen(view) is not { } vehicle) return;
        var fitted = shop.DrivelineOn(vehicle, Today);
        position ??= view.Choose(Spoken($"Fit what to {vehicle.Name}?"), [.. Enum.GetValues<Position>().Select(each => new ChoiceOption(each.ToString(), fitted.At(each) is { } part ? $"{each.InWords()}: {part.Name}" : each.InWords()))], NextStep.Missing(fitted.Driveline)?.ToString(), FitActs.Help);
        if (!Enum.TryParse<Position>(position, out var chosen)) return;

        var said = new FitActs(shop, vehicle, chosen, Today).Run(view);
        if (said is not null) ShowAndSay(view, vehicle.Id, said, withNext: true);
    }

    public void TakeOff(IWorkbenchView view, string? position)
    {
        if (Chosen(view) is not { } vehicle || !Enum.TryParse<Position>(position, out var place)) return;
        if (shop.DrivelineOn(vehicle, Today).At(place) is null) view.Say(Spoken($"Nothing is fitted as {place.InWords()}."));
        else if (new FitActs(shop, vehicle, place, Today).TakeOff(view) is { } said) ShowAndSay(view, vehicle.Id, said, withNext: true);
    }

    public void CountTurns(IWorkbenchView view)
    {
        if (Chosen(view) is not { } vehicle) return;
        var none = Spoken($"{vehicle.Name} has no axle yet: fit one with f, then count it.");
        if (Which<AxleComponent>(view, vehicle, Spoken("Count which axle?"), none, "TurnCount", Position.RearAxle, Position.FrontAxle) is not { } axle) return;

        if (tallies.CountAxle(view, axle.Name, Today, edit => shop.Add(new TurnCountSession(axle, vehicle), edit)))
            ShowAndSay(view, vehicle.Id, Spoken($"Kept: the turn count of {axle.Name}."), withNext: true);
    }

    public void RollOut(IWorkbenchView view)
    {
        if (Chosen(view) is not { } vehicle) return;
        var none = Spoken($"{vehicle.Name} has no tyres yet: fit them with f, then roll them out.");
        if (Which<WheelSetComponent>(view, vehicle, Spoken("Roll which tyres?"), none, "RollOut", Position.Tyres, Position.FrontTyres) is not { } wheels) return;

        if (tallies.RollOut(view, wheels, Today, forNow.Units, edit => shop.Add(new RollOutSession(wheels, vehicle), edit)))
            ShowAndSay(view, vehicle.Id, Spoken($"Kept: the roll-out of {wheels.Name}."));
    }

    public void Measure(IWorkbenchView view, SessionKind? kind = null)
    {
        if (Chosen(view) is not { } vehicle) return;
        if (new MeasureActs(shop, tallies, forNow.Units).Run(view, vehicle, Today, kind) is { } said) ShowAndSay(view, vehicle.Id, said);
    }

    public void EditGoal(IWorkbenchView view)
    {
        if (Chosen(view) is not { } vehicle) return;
        var gears = shop.DrivelineOn(vehicle, Today).Driveline.Steps.Select(step => step.Name).ToList();
        if (new GoalActs(shop, vehicle, gears, forNow.Units).Run(view) is { } said) ShowAndSay(view, vehicle.Id, said, withNext: true);
    }

    public void WriteSheet(IWorkbenchView view)
    {
        if (Chosen(view) is not { } vehicle) return;
        var bench = VehicleOnBench.Read(shop, vehicle, Today);
        string? said = null;
        if (view.Fill(SheetForm.For(shop, bench, forNow.Units, clock, forNow.Search, view, outcome => said = outcome)) && said is not null) view.Say(said);
    }

    public void Remove(IWorkbenchView view)
    {
        if (Chosen(view) is not { } vehicle) return;
        GoThrough(view, () => new RemoveActs(shop, vehicle, clock.LocalTimeZone).Run(view));
    }

    // The part that is fitted, asked for where front and rear have their own; null where there is none, which is said, or the question is left.
    private T? Which<T>(IWorkbenchView view, Vehicle vehicle, string question, string none, string help, params Position[] places)
        where T : Component
    {
        var fitted = shop.DrivelineOn(vehicle, Today);
        var there = places.Where(place => fitted.At(place) is T).ToList();
        if (there.Count == 0) view.Say(none);
        if (there.Count < 2) return there.Select(place => (T)fitted.At(place)!).FirstOrDefault();

        var chosen = view.Choose(question, [.. there.Select(place => new ChoiceOption(place.ToString(), $"{place.InWords()}: {fitted.At(place)!.Name}"))], help: help);
        return Enum.TryParse<Position>(chosen, out var position) ? (T)fitted.At(position)! : null;
    }

    private Vehicle? OtherCalled(string name) => shop.Vehicles().FirstOrDefault(each => each.IsCalled(name));

    // There may be nothing to take back, or something stands on it: whoever pressed the key says that.
    private void GoThrough(IWorkbenchView view, Func<string?> step)
    {
        if (step() is { } said) ShowAgain(view, said);
    }

    private static string? Told(string how, string? change) => change is null ? null : $"{how}: {change}.";

    private static string NothingChosen => Spoken("No vehicle is chosen: make one with n.");

    private Vehicle? Chosen(IWorkbenchView view)
    {
        var vehicle = view.Model.Chosen is { } chosen ? shop.Vehicles().FirstOrDefault(each => each.Id == chosen.Id) : null;
        if (vehicle is null) view.Say(NothingChosen);
        return vehicle;
    }

    private void ShowAndSay(IWorkbenchView view, long? vehicleId, string message, bool withNext = false)
    {
        revision++;
        view.Show(Model(vehicleId));
        view.Say(withNext && onBench is not null && NextStep.Of(onBench) is { } next ? $"{message} {next}" : message);
    }

    // Only the chosen vehicle is judged here; the others come from the walk beside the screen.
    private WorkbenchModel Model(long? chosenId)
    {
        var vehicles = shop.Vehicles();
        var vehicle = vehicles.FirstOrDefault(each => each.Id == chosenId) ?? (vehicles.Count > 0 ? vehicles[0] : null);
        var chosen = vehicle is null ? null : VehicleOnBench.Read(shop, vehicle, Today);
        onBench = chosen;
        if (chosen is not null) judged[chosen.Vehicle.Id] = FindingsWords.Count(chosen.Findings);
        return new(
            Rows(vehicles),
            chosen is null ? null : Shown(chosen),
            banner,
            revision);
    }

    private List<VehicleRow> Rows(IReadOnlyList<Vehicle> vehicles) => [.. vehicles.Select(each => new VehicleRow(each.Id, each.Name, each.State.InWords(), judged.GetValueOrDefault(each.Id)))];

    // With what is tried on it, and said so beside its name.
    private VehicleModel Shown(VehicleOnBench bench)
    {
        var tried = forNow.WhatIf.On(bench, shop);
        var model = tried.ToModel(forNow.Units, forNow.Speeds);
        return ReferenceEquals(tried, bench) ? model : model with { Facts = Spoken("WHAT IF: not stored; page Plans, d drops it") };
    }
}
