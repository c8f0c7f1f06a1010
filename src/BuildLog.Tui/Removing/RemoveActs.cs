using BuildLog.Data;
using BuildLog.Data.Components;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Quantities;
using BuildLog.Tui.Forms;
using BuildLog.Tui.Workbench;

namespace BuildLog.Tui.Removing;

/// <summary>Takes the vehicle on the bench, or a part that lies on the shelf, out of the record; what hangs on it is asked about first.</summary>
internal sealed class RemoveActs(Shop shop, Vehicle vehicle)
{
    private const string TheVehicle = "vehicle";

    /// <returns>What happened, or null if nothing did.</returns>
    /// <exception cref="RefusedException">It cannot go, such as a part that was fitted once; the sentence says why and what to do.</exception>
    public string? Run(IWorkbenchView view)
    {
        var shelf = shop.Parts().Where(place => place.Fitment is null).Select(place => place.Component).ToList();
        return view.Choose("Remove what from the record?", [new(TheVehicle, $"the vehicle {vehicle.Name}"), .. shelf.Select(part => new ChoiceOption(IdOf(part), $"{part.Kind} {part.Name}, on the shelf"))]) switch
        {
            null => null,
            TheVehicle => IsMeant(view, vehicle.Name, vehicle) ? Removed(vehicle.Name, () => shop.Remove(vehicle, withEverything: true)) : null,
            var id => Remove(view, shelf.First(part => IdOf(part) == id)),
        };
    }

    private string? Remove(IWorkbenchView view, Component part)
        => IsMeant(view, $"{part.Kind} {part.Name}", part) ? Removed($"{part.Kind} {part.Name}", () => shop.Remove(part, withEverything: true)) : null;

    private bool IsMeant(IWorkbenchView view, string name, Kept record)
    {
        var with = shop.WhatGoesWith(record);
        return view.Confirm(new(
            $"Remove {name}?",
            $"{(with.Length == 0 ? "Nothing else hangs on it." : $"It takes along {with}.")} z brings all of it back, also after a restart.",
            "Remove", "Keep"));
    }

    private static string Removed(string name, Action remove)
    {
        remove();
        return $"Removed: {name}. z brings it back.";
    }

    private static string IdOf(Component part) => FormattableString.Invariant($"part {part.Id}");
}
