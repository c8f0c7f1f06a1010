using BuildLog.Data;
using BuildLog.Data.Hunting;
using BuildLog.Data.Plans;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Options;
using BuildLog.Tui.Bench;

namespace BuildLog.Tui.Hunting;

/// <summary>A part of a way out or of a plan, to be hunted: between which values it will do, what to ask for by name, and what goes with it.</summary>
/// <param name="Bench">The vehicle as it is.</param>
/// <param name="Planned">The vehicle as the way out or the plan has it.</param>
/// <param name="Position">Where the part goes.</param>
/// <param name="Name">What it is called there.</param>
internal sealed record HuntedPart(VehicleOnBench Bench, VehicleOnBench Planned, Position Position, string Name)
{
    /// <summary>What else is changed with it, as a plan; null where it goes in by itself.</summary>
    public Plan? Plan { get; init; }

    /// <summary>What is changed with it without being hunted; empty for nothing.</summary>
    public string Alike { get; init; } = "";

    /// <summary>What it may be with the others as the way out has them; null where no number of it is wanted.</summary>
    public WindowOfPart? Window { get; } = WantedWindows.At(Planned, Position).FirstOrDefault(window => WantedWindows.Of(window) is not null);

    private WantedKind Kind => WantedWindows.Kind(Position);

    // Its window is computed wherever it is asked for: beside the parts that are there, or those of its plan.
    private string Title => Window is null ? Spoken($"{Position.InWords()} for {Bench.Vehicle.Name}: {Name}")
        : Plan is { } plan ? Spoken($"{Position.InWords()} for {Bench.Vehicle.Name}, plan {plan.Name}")
        : Spoken($"{Position.InWords()} for {Bench.Vehicle.Name}");

    /// <summary>The hunt that is on already for such a part; null for none.</summary>
    public WantedPart? Already(Shop shop)
        => shop.Wanted(Bench.Vehicle).FirstOrDefault(wanted => wanted.State == WantedState.Hunting && wanted.Kind == Kind && wanted.PlanId == Plan?.Id && (wanted.Kind != WantedKind.Axle || HuntedPlace.Of(Bench.Driveline, wanted) == Position)
            && (Window is null ? wanted.Title == Title : wanted.Windows.All(IsOfIt)));

    // Within what somebody set himself it is the same hunt.
    private bool IsOfIt(WantedWindow own) => own.Quantity == WantedWindows.Quantity(Window!) && own.Read().Overlaps(Window!.Window);

    /// <summary>Hunts it; a plan that is not in the record yet is kept with it.</summary>
    public WantedPart Hunt(Shop shop)
    {
        var wanted = New(shop);
        return Plan is null ? shop.Add(wanted) : shop.Hunt(wanted, Plan);
    }

    /// <summary>The hunt, to be stored.</summary>
    public WantedPart New(Shop shop) => new(Bench.Vehicle, Kind) { Title = HuntedName.Free(shop, Bench.Vehicle, Title), Notes = string.Join(' ', Notes()) };

    // Of the part as the way out has it; a gearbox has one for each gear.
    private double? Number => Position switch
    {
        Position.RearAxle => Planned.Driveline.RearAxle?.Ratio?.Value.Value,
        Position.FrontAxle => Planned.Driveline.FrontAxle?.Ratio?.Value.Value,
        Position.Overdrive => Planned.Driveline.Overdrive?.Ratio?.Value.Value,
        Position.Tyres => Planned.Driveline.DrivingTyres?.RollingCircumference?.Value.Value,
        _ => null,
    };

    private IEnumerable<string> Notes()
    {
        string[] named = [Name, .. Window is null ? [] : WouldDo.Of(Planned.Driveline, Planned.Goals, Window)];
        yield return Spoken($"Such as {string.Join(", ", named.Distinct())}.");
        if (Window is { } window && Number is { } number && !window.Window.Contains(number))
            yield return Spoken($"{Name} itself lies beyond that window, and only may do: measure the other parts more closely first.");
        if (Alike.Length > 0) yield return Spoken($"Together with {Alike}.");
    }
}
