using BuildLog.Data.Components;
using BuildLog.Data.Sessions;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;

namespace BuildLog.Data.Drivelines;

/// <summary>What is known of each part today, and from which evidence.</summary>
/// <remarks>Each part is read once, so that two drivelines with the same part share its errors, which then cancel where they should.</remarks>
internal sealed class PartEvidence(IReadOnlyList<Session> sessions)
{
    private readonly ILookup<long, Session> sessions = sessions.ToLookup(session => session.ComponentId);
    private readonly Dictionary<long, IReadOnlyList<NumberKnown>> known = [];

    public IReadOnlyList<NumberKnown> NumbersOf(Component component, Position position)
        => [.. Numbers(component).Select(number => number with { Position = position })];

    /// <summary>The driveline with this part in it.</summary>
    public Driveline Joined(Driveline chain, Component component, Position position) => component switch
    {
        EngineComponent => chain with { Engine = new(component.Name, Find(component, PartNumbers.Idle), Find(component, PartNumbers.Redline)) },
        TransmissionComponent box => chain with
        {
            Transmission = new(box.Name, [.. box.Gears.Select(gear => new Gear(gear.Name, Find(box, PartNumbers.Gear(gear))!))]),
        },
        OverdriveComponent => chain with { Overdrive = new(component.Name, Find(component, PartNumbers.Ratio)) },
        TransferCaseComponent => chain with { TransferCase = new(component.Name, Find(component, PartNumbers.High), Find(component, PartNumbers.Low)) },
        AxleComponent when position == Position.FrontAxle => chain with { FrontAxle = Axle(component) },
        AxleComponent => chain with { RearAxle = Axle(component) },
        WheelSetComponent set => chain with { Tyres = new(set.Name, Find(set, PartNumbers.Circumference), set.Size) },
        _ => throw new ArgumentOutOfRangeException(nameof(component), component.Kind, "No such part in a driveline."),
    };

    private Axle Axle(Component component) => new(component.Name, Find(component, PartNumbers.Ratio))
    {
        Quoted = Numbers(component).FirstOrDefault(known => known.Number == PartNumbers.Ratio)?.PassedOver.FirstOrDefault(IsQuoted),
        HubReduction = Find(component, PartNumbers.HubReduction),
    };

    // An earlier count is no quotation.
    private static bool IsQuoted(Known known) => known.Source is Source.MakersData or Source.Tag or Source.OwnersWord or Source.Assumed;

    private Known? Find(Component component, string number) => Numbers(component).FirstOrDefault(known => known.Number == number)?.Used;

    private IReadOnlyList<NumberKnown> Numbers(Component component)
    {
        if (!known.TryGetValue(component.Id, out var numbers))
            known[component.Id] = numbers = [.. PartNumbers.Of(component, [.. sessions[component.Id]])];
        return numbers;
    }
}
