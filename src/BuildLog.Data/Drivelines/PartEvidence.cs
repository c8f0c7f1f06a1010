using BuildLog.Data.Components;
using BuildLog.Data.Sessions;
using BuildLog.Gearing.Drivelines;

namespace BuildLog.Data.Drivelines;

/// <summary>What is known of each part today, and from which evidence.</summary>
/// <remarks>Each part is read once, so that two drivelines with the same part share its errors, which then cancel where they should.</remarks>
internal sealed class PartEvidence(IReadOnlyList<Session> sessions)
{
    private readonly ILookup<long, Session> sessions = sessions.Where(session => session.ComponentId is not null).ToLookup(session => session.ComponentId!.Value);
    private readonly Dictionary<long, IReadOnlyList<NumberKnown>> known = [];

    public IReadOnlyList<NumberKnown> NumbersOf(Component component, Position position)
        => [.. Numbers(component).Select(number => number with { Position = position })];

    /// <summary>The driveline with this part in it.</summary>
    /// <remarks>The front wheels' own set stands beside the rear one: join that before it, or it counts as fitted alone.</remarks>
    public Driveline Joined(Driveline chain, Component component, Position position)
    {
        var parts = new FittedParts(Numbers(component), [.. sessions[component.Id]]);
        return component switch
        {
            EngineComponent engine => chain with { Engine = parts.Of(engine) },
            TransmissionComponent box => chain with { Transmission = parts.Of(box) },
            OverdriveComponent overdrive => chain with { Overdrive = parts.Of(overdrive) },
            TransferCaseComponent transfer => chain with { TransferCase = parts.Of(transfer) },
            PropshaftComponent shaft when position == Position.FrontPropshaft => chain with { FrontPropshaft = parts.Of(shaft) },
            PropshaftComponent shaft => chain with { Propshaft = parts.Of(shaft) },
            AxleComponent axle when position == Position.FrontAxle => chain with { FrontAxle = parts.Of(axle) },
            AxleComponent axle => chain with { RearAxle = parts.Of(axle) },
            WheelSetComponent set when position == Position.FrontTyres => chain.Tyres is { } rear
                ? chain with { Tyres = rear with { FrontPair = parts.Of(set) } }
                : chain with { LoneFrontTyres = parts.Of(set) },
            WheelSetComponent set => chain with { Tyres = parts.Of(set), LoneFrontTyres = null },
            SpeedometerComponent meter => chain with { Speedometer = parts.Of(meter) },
            _ => throw new ArgumentOutOfRangeException(nameof(component), component.Kind, "No such part in a driveline."),
        };
    }

    private IReadOnlyList<NumberKnown> Numbers(Component component)
    {
        if (!known.TryGetValue(component.Id, out var numbers))
            known[component.Id] = numbers = [.. PartNumbers.Of(component, [.. sessions[component.Id]])];
        return numbers;
    }
}
