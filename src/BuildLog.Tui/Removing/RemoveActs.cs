using BuildLog.Data;
using BuildLog.Data.Changes;
using BuildLog.Data.Components;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Quantities;
using BuildLog.Tui.Forms;
using BuildLog.Tui.Workbench;

namespace BuildLog.Tui.Removing;

/// <summary>Takes the vehicle on the bench, or a part that lies on the shelf, out of the record, what hangs on it being asked about first; or brings back what was taken out.</summary>
internal sealed class RemoveActs(Shop shop, Vehicle vehicle, TimeZoneInfo zone)
{
    private const string TheVehicle = "vehicle";

    /// <returns>What happened, or null if nothing did.</returns>
    /// <exception cref="RefusedException">It cannot go, such as a part that was fitted once; the sentence says why and what to do.</exception>
    public string? Run(IWorkbenchView view)
    {
        var shelf = shop.Parts().Where(place => place.Fitment is null).Select(place => place.Component).ToList();
        var gone = shop.Removals();
        return view.Choose(
            Spoken("Remove what, or bring it back?"),
            [
                new(TheVehicle, Spoken($"remove the vehicle {vehicle.Name}")),
                .. shelf.Select(part => new ChoiceOption(IdOf(part), part.Ownership == Ownership.Gone
                    ? Spoken($"the {NamedPart.InWords(part.Kind, part.Name)} is gone: it is here again")
                    : Spoken($"remove the {NamedPart.InWords(part.Kind, part.Name)}, on the shelf"))),
                .. gone.Select(removal => new ChoiceOption(IdOf(removal), Spoken($"bring back what was removed {removal.TakenOut}, {DayText.InWords(TimeZoneInfo.ConvertTime(removal.When, zone))}"))),
            ]) switch
        {
            null => null,
            TheVehicle => IsMeant(view, vehicle.Name, vehicle) ? Removed(vehicle.Name, () => shop.Remove(vehicle, withEverything: true)) : null,
            var id when gone.FirstOrDefault(removal => IdOf(removal) == id) is { } removal => Spoken($"Brought back: {shop.Undo(removal)}."),
            var id => Remove(view, shelf.First(part => IdOf(part) == id)),
        };
    }

    private string? Remove(IWorkbenchView view, Component part)
    {
        var name = NamedPart.InWords(part.Kind, part.Name);
        if (part.Ownership == Ownership.Gone)
        {
            shop.Change(part, edited => edited.Ownership = null);
            return Spoken($"Here again: {name}.");
        }

        if (shop.LastOfLooseParts().Any(fitment => fitment.ComponentId == part.Id)) return SeeOff(view, name, part);
        return IsMeant(view, name, part) ? Removed(name, () => shop.Remove(part, withEverything: true)) : null;
    }

    // Its story belongs to the vehicle it was on, so it cannot be taken out; but it need not be here.
    private string? SeeOff(IWorkbenchView view, string name, Component part)
    {
        if (!view.Confirm(new(Spoken($"Is {name} gone?"), Spoken("It was on a vehicle, so its story stays in the record: strike the fitment first if it never was. If it was sold, scrapped or left elsewhere, it is not proposed any more, and this key brings it back."), Spoken("Gone"), Spoken("Keep")))) return null;

        shop.Change(part, edited => edited.Ownership = Ownership.Gone);
        return Spoken($"Gone from the shop: {name}. z takes that back.");
    }

    private bool IsMeant(IWorkbenchView view, string name, Kept record)
    {
        var with = shop.WhatGoesWith(record);
        return view.Confirm(new(
            Spoken($"Remove {name}?"),
            Spoken($"{(with.Length == 0 ? Spoken("Nothing else hangs on it.") : Spoken($"It takes along {with}."))} z brings all of it back, and so does this key, also after a restart."),
            Spoken("Remove"), Spoken("Keep")));
    }

    private static string Removed(string name, Action remove)
    {
        remove();
        return Spoken($"Removed: {name}. z brings it back.");
    }

    private static string IdOf(ChangeSet removal) => FormattableString.Invariant($"change {removal.Id}");

    private static string IdOf(Component part) => FormattableString.Invariant($"part {part.Id}");
}
