using BuildLog.Data.Components;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;

namespace BuildLog.Data.Sessions;

/// <summary>An axle's teeth, counted at least twice.</summary>
public sealed class TeethSession : Session
{
    /// <param name="axle">The axle, open.</param>
    /// <param name="on">The vehicle it was on; null on the bench.</param>
    public TeethSession(AxleComponent axle, Vehicle? on = null) => (ComponentId, VehicleId) = (axle.Id, on?.Id);

    internal TeethSession() { }

    public override Later Method => new Later("teeth");

    /// <summary>What the counts agree on.</summary>
    /// <exception cref="RefusedException">They do not, or there is one only.</exception>
    public Teeth Result() => TeethCounts.Agreed([.. Readings.Select(text => Teeth.Read(text).OrRefuse())]);

    public override void Check() => _ = Result();

    internal override bool Measures(Component? component) => component is AxleComponent;
}
