using System.Diagnostics.CodeAnalysis;
using BuildLog.Data;
using BuildLog.Data.Components;
using BuildLog.Data.Fitments;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Drivelines;
using BuildLog.Tui.Bench;
using BuildLog.Tui.Forms;
using BuildLog.Tui.Options;
using BuildLog.Tui.Parts;
using BuildLog.Tui.Plans;

namespace BuildLog.Tui.Fitments;

/// <summary>Everything that can be done at one position of a vehicle: fit new, fit from the shelf, correct, take off.</summary>
internal sealed class FitActs(Shop shop, Vehicle vehicle, Position position, DateOnly today)
{
    /// <summary>The help page of all that is asked here, and of where.</summary>
    public const string Help = "Parts";

    private const string FitNew = "new";
    private const string Edit = "edit";
    private const string Off = "off";

    // As read for the first effect.
    private VehicleOnBench? bench;
    private RejectedPlans? rejected;
    private IReadOnlyList<string>? emptied;

    /// <summary>Asks what to do and does it.</summary>
    /// <returns>What happened, or null if nothing did.</returns>
    public string? Run(IFormHost host)
    {
        var here = Here();
        var shelf = shop.Parts().Where(place => place.Component.Positions.Contains(position) && place.Component.Id != here?.Id && place.Component.Ownership != Ownership.Gone).ToList();
        if (here is null && shelf.Count == 0) return New(host);

        return host.Choose($"{vehicle.Name}: {position.InWords()}", [.. Options(here, shelf)], help: Help) switch
        {
            null => null,
            FitNew => New(host),
            Edit => EditHere(host, here!),
            Off => TakeOff(host, here!),
            var id => FromShelf(host, shelf.First(place => IdOf(place) == id)),
        };
    }

    /// <summary>Fits one part that is in the record already.</summary>
    public string? Fit(IFormHost host, Component part)
        => shop.Parts().FirstOrDefault(place => place.Component.Id == part.Id) is { } place ? FromShelf(host, place) : null;

    /// <summary>Takes off what is there and fits nothing.</summary>
    public string? TakeOff(IFormHost host) => Here() is { } here ? TakeOff(host, here) : null;

    private static IEnumerable<ChoiceOption> Options(Component? here, List<PartPlace> shelf)
    {
        if (here is not null) yield return new(Edit, Spoken($"correct the numbers of {here.Name}"));
        yield return new(FitNew, Spoken("fit a new part"));
        foreach (var place in shelf)
            yield return new(IdOf(place), Spoken($"fit {place.Component.Name} ({(place.Fitment is { } fitment ? Spoken($"now on {fitment.Vehicle.Name}") : Spoken("on the shelf"))})"));
        if (here is not null) yield return new(Off, Spoken($"take {here.Name} off, fit nothing"));
    }

    private static string IdOf(PartPlace place) => FormattableString.Invariant($"part {place.Component.Id}");

    private string? New(IFormHost host)
    {
        Component? fitted = null;
        var form = FitForm.New(position, vehicle, today, (part, facts) =>
        {
            shop.FitSometime(part, vehicle, position, facts.Day, facts.Odometer, facts.Reason);
            fitted = part;
        }, Effect);
        return host.Fill(form) && fitted is not null ? Fitted(fitted) : null;
    }

    private string? FromShelf(IFormHost host, PartPlace place)
    {
        // Why it came off, before it goes on again.
        string[] doubts = PartDoubts.Of(shop, place.Component).InWords is { } doubt ? [$"! {doubt}"] : [];
        return host.Fill(FitForm.Known(place.Component, place.Fitment?.Vehicle.Name, vehicle, today, facts => shop.FitSometime(place.Component, vehicle, position, facts.Day, facts.Odometer, facts.Reason)) with { Echo = _ => [.. Effect(place.Component), .. doubts] })
            ? Fitted(place.Component)
            : null;
    }

    // Said while the form is open: what the part would do to cruise and findings.
    private IReadOnlyList<string> Effect(Component part)
    {
        ReadBench();
        var after = shop.Trying(bench.Driveline, position, [part])[0];
        rejected ??= RejectedPlans.Of(shop, bench);
        return
        [
            .. EffectWords.Of(bench.Driveline, after, bench.Goals),
            .. part.Id != 0 && rejected.Says(after, [new(position, part)]) is { } before ? (string[])[before.Says] : [],
        ];
    }

    private IReadOnlyList<string> EffectOfNothing()
    {
        ReadBench();
        return emptied ??= EffectWords.Of(bench.Driveline, bench.Driveline.Without(position), bench.Goals);
    }

    [MemberNotNull(nameof(bench))]
    private void ReadBench() => bench ??= VehicleOnBench.Read(shop, vehicle, today);

    private string Fitted(Component part) => Spoken($"Fitted to {vehicle.Name}: {part.Name}.");

    private string? EditHere(IFormHost host, Component here)
        => host.Fill(PartForm.For(here, vehicle.Name, edit => shop.Change(here, edit), () => Here() ?? here, Effect)) ? Spoken($"Corrected: {(Here() ?? here).Name}.") : null;

    private Component? Here() => shop.DrivelineOn(vehicle, today).At(position);

    private string? TakeOff(IFormHost host, Component here)
        => host.Fill(FitForm.Off(here, vehicle, today, facts => shop.TakeOffSometime(here, facts.Day, facts.Odometer, facts.Reason), EffectOfNothing))
            ? Spoken($"Off and on the shelf: {here.Name}.")
            : null;
}
