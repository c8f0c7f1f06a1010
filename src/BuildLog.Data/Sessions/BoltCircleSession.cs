using BuildLog.Data.Components;
using BuildLog.Data.Specs;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.RunningGear;

namespace BuildLog.Data.Sessions;

/// <summary>Chords between the studs of a hub, or the holes of a wheel.</summary>
public sealed class BoltCircleSession : Session
{
    /// <param name="part">An axle or a set of wheels.</param>
    /// <param name="on">The vehicle it was on; null on the bench.</param>
    public BoltCircleSession(BoltedComponent part, Vehicle? on = null) => (ComponentId, VehicleId) = (part.Id, on?.Id);

    internal BoltCircleSession() { }

    public override Later Method => new Later("bolt circle");

    public int Studs { get; set; } = 5;

    /// <summary>Which two studs the chords were measured between.</summary>
    public Chord Between { get; set; } = Chord.SkipOne;

    /// <summary>How far off the tool may be, as typed.</summary>
    public string Tape { get; set; } = "0.2 mm";

    /// <summary>What the readings give: the diameter, metres.</summary>
    /// <exception cref="RefusedException">They give nothing.</exception>
    public Measured Result() => BoltCircle.FromChord(LengthReadings.Mean(Readings, Tape, Spoken("chord")), Studs, Between);

    public override void Check() => _ = Result();

    private protected override string InWords(string reading) => LengthReadings.InWords(reading);

    internal override bool Measures(Component? component) => component is BoltedComponent;

    internal override IEnumerable<NumberFound> Finds() => [Found(Spec.PitchCircle, Result())];
}
