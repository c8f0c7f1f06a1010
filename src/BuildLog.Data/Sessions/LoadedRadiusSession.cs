using BuildLog.Data.Components;
using BuildLog.Data.Specs;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Data.Sessions;

/// <summary>The height of the hub's middle over the floor, the vehicle standing on its tyres.</summary>
public sealed class LoadedRadiusSession : Session
{
    /// <param name="wheels">The set it stands on.</param>
    /// <param name="on">The vehicle.</param>
    public LoadedRadiusSession(WheelSetComponent wheels, Vehicle? on = null) => (ComponentId, VehicleId) = (wheels.Id, on?.Id);

    internal LoadedRadiusSession() { }

    public override Later Method => new Later("loaded radius");

    /// <summary>How far off the tool may be, as typed.</summary>
    public string Tape { get; set; } = "2 mm";

    /// <summary>What the readings give, metres.</summary>
    /// <exception cref="RefusedException">They give nothing.</exception>
    public Measured Result() => LengthReadings.Mean(Readings, Tape, Method);

    public override void Check() => CheckRange(Spec.LoadedRadius, Result());

    private protected override string InWords(string reading) => LengthReadings.InWords(reading);

    internal override bool Measures(Component? component) => component is WheelSetComponent;

    internal override IEnumerable<NumberFound> Finds() => [Found(Spec.LoadedRadius, Result())];
}
