using BuildLog.Data.Components;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;

namespace BuildLog.Data.Sessions;

/// <summary>One gear of a gearbox, or an overdrive unit, its turns counted.</summary>
public sealed class GearCountSession : Session
{
    /// <param name="box">The gearbox counted.</param>
    /// <param name="gear">Which of its gears, as the knob names it.</param>
    /// <param name="on">The vehicle it was on; null on the bench.</param>
    public GearCountSession(TransmissionComponent box, string gear, Vehicle? on = null) => (ComponentId, Gear, VehicleId) = (box.Id, gear.Trim(), on?.Id);

    /// <param name="unit">The overdrive unit counted.</param>
    /// <param name="engaged">Whether it was engaged; else both its ends turn alike, and that is all the count can tell.</param>
    /// <param name="on">The vehicle it was on; null on the bench.</param>
    public GearCountSession(OverdriveComponent unit, bool engaged, Vehicle? on = null)
        => (ComponentId, Gear, VehicleId) = (unit.Id, engaged ? OverdriveComponent.Engaged : OverdriveComponent.NotEngaged, on?.Id);

    internal GearCountSession() { }

    public override Later Method => new Later("gear count");

    /// <summary>As the knob names it, such as <c>3</c>; of an overdrive unit <see cref="OverdriveComponent.Engaged"/> or not.</summary>
    public string Gear { get; internal set; } = "";

    /// <summary>The smallest fraction of an input turn that was read, as typed.</summary>
    public string ReadTo { get; set; } = "0.25";

    /// <summary>How far off the output's mark may have been, in turns, as typed.</summary>
    public string Align { get; set; } = "0.02";

    /// <summary>What the readings give.</summary>
    /// <exception cref="RefusedException">They give nothing.</exception>
    public TurnCount Result()
    {
        var how = new CountPrecision(QuantityText.ReadNumber(ReadTo).OrRefuse(), QuantityText.ReadNumber(Align).OrRefuse());
        return TurnCount.OfGear([.. Readings.Select(text => TurnReading.ReadGear(text).OrRefuse())], how, Spoken($"count of {CountedGear.InWords(Gear)}, {Day.InWords}"));
    }

    public override void Check()
    {
        TransmissionComponent.CheckGearName(Gear);
        var ratio = Result().Ratio.Value;
        if (Gear == OverdriveComponent.Engaged) RatioRange.Overdrive.Checked(ratio);
    }

    internal override bool Measures(Component? component) => component is TransmissionComponent or OverdriveComponent;
}
