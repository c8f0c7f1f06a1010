using BuildLog.Data;
using BuildLog.Data.Components;
using BuildLog.Data.RoadTests;
using BuildLog.Data.Sessions;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Drivelines;
using BuildLog.Tui.Bench;
using BuildLog.Tui.Forms;
using BuildLog.Tui.Workbench;

namespace BuildLog.Tui.Measurements;

/// <summary>Everything that can be measured on a vehicle as it stands: which method, then its session.</summary>
internal sealed class MeasureActs(Shop shop, TallyActs tallies, UnitSystem units)
{
    /// <param name="kind">The only kind that is wanted; null for any.</param>
    /// <returns>What was kept, or null if nothing was.</returns>
    public string? Run(IWorkbenchView view, Vehicle vehicle, DateOnly today, SessionKind? kind = null)
    {
        var can = Methods(view, vehicle, today).Where(method => kind is null || method.Kind == kind).ToList();
        var method = can.Count == 1 && kind is not null ? can[0] : Chosen(view, vehicle, can, kind is null ? SessionKind.All : [kind]);
        return method is not null && method.Do() ? Spoken($"Kept: {method.Words}.") : null;
    }

    // What cannot be measured yet is listed too, and says what it waits for.
    private static Method? Chosen(IWorkbenchView view, Vehicle vehicle, List<Method> can, IReadOnlyList<SessionKind> wanted)
    {
        var lacking = wanted.Where(kind => can.TrueForAll(method => method.Kind != kind)).Select(kind => (kind.Words, Says: $"{kind.Words}: {kind.Needs}")).ToList();
        var chosen = can.Count == 0 && lacking.Count == 1 ? lacking[0].Words
            : view.Choose(Spoken($"Measure what on {vehicle.Name}?"), [.. can.Select(method => new ChoiceOption(method.Words, method.Words)), .. lacking.Select(lack => new ChoiceOption(lack.Words, lack.Says))], help: "Measured");
        if (lacking.Find(lack => lack.Words == chosen).Says is { } says) view.Say($"{vehicle.Name}, {says}.");
        return can.Find(method => method.Words == chosen);
    }

    private IEnumerable<Method> Methods(IWorkbenchView view, Vehicle vehicle, DateOnly today)
    {
        var fitted = shop.DrivelineOn(vehicle, today);
        foreach (var axle in new[] { Position.RearAxle, Position.FrontAxle }.Select(fitted.At).OfType<AxleComponent>())
        {
            yield return new(SessionKind.TurnCount, Spoken($"turn count of {axle.Name}"), () => tallies.CountAxle(view, axle.Name, today, edit => shop.Add(new TurnCountSession(axle, vehicle), edit)));
            yield return new(SessionKind.Teeth, Spoken($"teeth of {axle.Name}"), () => view.Fill(TeethForm.For(axle, today, edit => shop.Add(new TeethSession(axle, vehicle), edit))));
        }

        if (fitted.At(Position.Transmission) is TransmissionComponent box) yield return new(SessionKind.Gear, Spoken($"a gear of {box.Name}"), () => CountGear(view, box, vehicle, today));
        if (fitted.At(Position.Overdrive) is OverdriveComponent unit) yield return new(SessionKind.Overdrive, Spoken($"turns of {unit.Name}"), () => CountUnit(view, unit, vehicle, today));
        foreach (var wheels in new[] { Position.Tyres, Position.FrontTyres }.Select(fitted.At).OfType<WheelSetComponent>())
        {
            yield return new(SessionKind.RollOut, Spoken($"roll-out of {wheels.Name}"), () => tallies.RollOut(view, wheels, today, units, edit => shop.Add(new RollOutSession(wheels, vehicle), edit)));
            yield return new(SessionKind.LoadedRadius, Spoken($"loaded radius of {wheels.Name}"), () => view.Fill(LoadedRadiusForm.For(wheels, today, edit => shop.Add(new LoadedRadiusSession(wheels, vehicle), edit), units: units)));
        }

        foreach (var shaft in new[] { Position.Propshaft, Position.FrontPropshaft }.Select(fitted.At).OfType<PropshaftComponent>().Where(shaft => shaft.Pieces.Count < 2))
            yield return new(SessionKind.ShaftAngles, Spoken($"angles of {shaft.Name}"), () => view.Fill(PropshaftAnglesForm.For(shaft, today, edit => shop.Add(new ShaftAnglesSession(shaft, vehicle), edit))));
        foreach (var bolted in new[] { Position.RearAxle, Position.FrontAxle, Position.Tyres, Position.FrontTyres }.Select(fitted.At).OfType<BoltedComponent>())
            yield return new(SessionKind.BoltCircle, Spoken($"bolt circle of {bolted.Name}"), () => view.Fill(BoltCircleForm.For(bolted, today, edit => shop.Add(new BoltCircleSession(bolted, vehicle), edit))));

        yield return new(SessionKind.Weighbridge, Spoken("weighbridge"), () => view.Fill(WeighbridgeForm.For(vehicle, today, edit => shop.Add(new WeighbridgeSession(vehicle), edit), units: units)));
        yield return new(SessionKind.RoadTest, Spoken("road test"), () => view.Fill(RoadTestForm.For(vehicle, day => shop.DrivelineWhen(vehicle, day)?.Driveline, today, edit => shop.Add(new RoadTest(vehicle), edit), units: units)));
        yield return new(SessionKind.SpeedometerRun, Spoken("speedometer run"), () => view.Fill(SpeedometerRunForm.For(vehicle, today, edit => shop.Add(new SpeedometerRunSession(vehicle), edit))));
    }

    private bool CountGear(IWorkbenchView view, TransmissionComponent box, Vehicle vehicle, DateOnly today)
    {
        if (box.GearNames.Count == 0)
        {
            view.Say(Spoken($"{box.Name} has no gears in the record yet: enter their ratios, even guessed ones, then count."));
            return false;
        }

        var gear = view.Choose(Spoken($"Which gear of {box.Name}?"), [.. box.GearNames.Select(name => new ChoiceOption(name, Spoken($"gear {name}")))]);
        return gear is not null && tallies.CountGear(view, box.Name, gear, today, edit => shop.Add(new GearCountSession(box, gear, vehicle), edit));
    }

    // Engaged it tells its ratio; not engaged only that both ends turn alike.
    private bool CountUnit(IWorkbenchView view, OverdriveComponent unit, Vehicle vehicle, DateOnly today)
        => view.Choose(Spoken($"How was {unit.Name} turned?"), [.. ((string[])[OverdriveComponent.Engaged, OverdriveComponent.NotEngaged]).Select(how => new ChoiceOption(how, CountedGear.InWords(how)))]) is { } chosen
            && tallies.CountGear(view, unit.Name, chosen, today, edit => shop.Add(new GearCountSession(unit, chosen == OverdriveComponent.Engaged, vehicle), edit));

    private sealed record Method(SessionKind Kind, string Words, Func<bool> Do);
}
