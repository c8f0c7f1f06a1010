using BuildLog.Data.Vehicles;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Vehicles;

/// <summary>Asks for a vehicle's own facts; its parts are fitted separately.</summary>
public static class VehicleForm
{
    /// <param name="vehicle">A new vehicle, or one to be corrected.</param>
    /// <param name="save">Stores it with the edit applied; refusals stay in the form.</param>
    /// <param name="otherCalled">The other vehicle that has a name already; null for none.</param>
    public static Form For(Vehicle vehicle, Action<Action<Vehicle>> save, Func<string, Vehicle?>? otherCalled = null) => new()
    {
        Title = vehicle.Name.Length == 0 ? Spoken("New vehicle") : Spoken($"Edit {vehicle.Name}"),
        IsOfTheShop = vehicle.Name.Length == 0,
        HelpPage = "Vehicle",
        Entries =
        [
            new TextEntry("name", Spoken("Name"))
            {
                AnswersFor = ["vehicle"],
                Initial = vehicle.Name,
                Hint = Spoken("what the shop calls it, such as Kestrel"),
                Check = values => NameRefusal(values["name"], otherCalled),
            },
            new TextEntry("description", Spoken("What it is")) { AnswersFor = ["what-it-is"], Initial = vehicle.Description, Hint = Spoken("kind, year, maker, model, such as pick-up of 1971, long bed") },
            new ChoiceEntry("state", Spoken("State"), [.. Enum.GetValues<VehicleState>().Select(state => new ChoiceOption(state.ToString(), state.InWords()))]) { Initial = vehicle.State.ToString() },
            new TextEntry("owner", Spoken("Owner")) { IsRemembered = true, Initial = vehicle.Owner },
            new TextEntry("chassis", Spoken("Chassis number")) { Initial = vehicle.ChassisNumber, Hint = Spoken("as stamped") },
            new TextEntry("registration", Spoken("Registration")) { Initial = vehicle.Registration },
            new ChoiceEntry("odometer", Spoken("Odometer counts"), [.. Enum.GetValues<OdometerUnit>().Select(unit => new ChoiceOption(unit.ToString(), unit.InWords()))]) { Initial = vehicle.OdometerUnit.ToString() },
            new YesNoEntry("front", Spoken("Driven in front")) { IsYes = vehicle.DrivesInFront, Hint = Spoken("yes: speeds follow the front axle") },
            .. LoadEntries.Entries(vehicle),
            new LinesEntry("notes", Spoken("Notes"), 3) { Initial = vehicle.Notes },
        ],
        Echo = values => LoadEntries.Doubt(values) is { } doubt ? [doubt] : [],
        Save = values => LoadEntries.Contradiction(values) is { } contradiction ? SaveOutcome.Refuse($"{contradiction.Line}", contradiction.Says) : Forms.Checks.Try(() => save(edited =>
        {
            edited.Name = values["name"];
            edited.Description = values["description"];
            edited.State = Enum.Parse<VehicleState>(values["state"]);
            edited.Owner = values["owner"];
            edited.ChassisNumber = values["chassis"];
            edited.Registration = values["registration"];
            edited.OdometerUnit = Enum.Parse<OdometerUnit>(values["odometer"]);
            edited.DrivesInFront = values.IsYes("front");
            edited.Notes = values["notes"];
            LoadEntries.Apply(values, edited);
        })),
    };

    private static string? NameRefusal(string name, Func<string, Vehicle?>? otherCalled)
        => name.Trim().Length == 0 ? Spoken("A vehicle needs a name, such as Kestrel.")
            : otherCalled?.Invoke(name) is { } other ? Spoken($"{other.Name} is in the shop already: give this one a name of its own.")
            : null;
}
