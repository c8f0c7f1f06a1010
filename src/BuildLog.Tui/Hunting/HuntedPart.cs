using BuildLog.Data;
using BuildLog.Data.Hunting;
using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Options;
using BuildLog.Tui.Bench;

namespace BuildLog.Tui.Hunting;

/// <summary>A part of a way out or of a plan, to be hunted: between which values it will do, what to ask for by name, and what goes with it.</summary>
/// <param name="Bench">The vehicle as it is.</param>
/// <param name="Whole">Its driveline as the way out has it.</param>
/// <param name="Findings">What the checks say of that.</param>
/// <param name="Position">Where the part goes.</param>
/// <param name="Name">What it is called there.</param>
/// <param name="Others">What else the way out changes, which is not fitted yet.</param>
internal sealed record HuntedPart(VehicleOnBench Bench, Driveline Whole, IReadOnlyList<Finding> Findings, Position Position, string Name, IReadOnlyList<string> Others)
{
    /// <summary>What is changed with it without being hunted; empty for nothing.</summary>
    public string Alike { get; init; } = "";

    /// <summary>What it may be with the others as the way out has them; null where no number of it is wanted.</summary>
    public WindowOfPart? Window { get; } = DrivelineWindows.Of(Whole, Bench.Goals, Findings).FirstOrDefault(window => window.Position == Position && WantedWindows.Of(window) is not null);

    private WantedKind Kind => WantedWindows.Kind(Position);

    // Alone its window is today's, computed wherever it is asked for. Beside other parts that are not fitted yet it is kept, since the record does not know it.
    private bool IsAlone => Others.Count == 0;

    private WantedWindow? Kept => Window is null || IsAlone ? null : WantedWindows.Of(Window);

    private string Title => Window is null || !IsAlone
        ? Spoken($"{Position.InWords()} for {Bench.Vehicle.Name}: {(Window is null ? Name : Window.InWords())}")
        : Spoken($"{Position.InWords()} for {Bench.Vehicle.Name}");

    /// <summary>The hunt that is on already for such a part; null for none.</summary>
    public WantedPart? Already(Shop shop)
        => shop.Wanted(Bench.Vehicle).FirstOrDefault(wanted => wanted.State == WantedState.Hunting && wanted.Kind == Kind && (wanted.Kind != WantedKind.Axle || HuntedPlace.Of(Bench.Driveline, wanted) == Position)
            && (Window is null ? wanted.Title == Title : Kept is { } kept ? wanted.Windows.Contains(kept) : wanted.Windows.All(IsOfIt)));

    // Within what somebody set himself it is the same hunt.
    private bool IsOfIt(WantedWindow own) => own.Quantity == WantedWindows.Quantity(Window!) && own.Read().Overlaps(Window!.Window);

    /// <summary>The hunt, to be stored.</summary>
    public WantedPart New(Shop shop) => new(Bench.Vehicle, Kind)
    {
        Title = HuntedName.Free(shop, Bench.Vehicle, Title),
        Windows = Kept is { } kept ? [kept] : [],
        Notes = string.Join(' ', Notes()),
    };

    // Of the part as the way out has it; a gearbox has one for each gear.
    private double? Number => Position switch
    {
        Position.RearAxle => Whole.RearAxle?.Ratio?.Value.Value,
        Position.FrontAxle => Whole.FrontAxle?.Ratio?.Value.Value,
        Position.Overdrive => Whole.Overdrive?.Ratio?.Value.Value,
        Position.Tyres => Whole.DrivingTyres?.RollingCircumference?.Value.Value,
        _ => null,
    };

    private IEnumerable<string> Notes()
    {
        string[] named = [Name, .. Window is null ? [] : WouldDo.Of(Whole, Bench.Goals, Window)];
        yield return Spoken($"Such as {string.Join(", ", named.Distinct())}.");
        if (Window is { } window && Number is { } number && !window.Window.Contains(number))
            yield return Spoken($"{Name} itself lies beyond that window, and only may do: measure the other parts more closely first.");
        string[] others = [.. Others, .. Alike.Length > 0 ? (string[])[Alike] : []];
        if (others.Length > 0) yield return Spoken($"Together with {string.Join(", ", others)}.");
    }
}
