using BuildLog.Gearing.Propshafts;
using CsCheck;
using Xunit;

namespace BuildLog.Gearing.Tests.Propshafts;

public sealed class ShaftTorqueTests
{
    private const double PoundFoot = 1.3558179483314004;

    // Worked example E8: 380 lb-ft, first gear 3.5, transfer low 2.72; the same in high, and an automatic of 2.48 with a converter of 2.0.
    [Fact]
    public void Low_gear_torque()
    {
        Assert.Equal(2921.21, ShaftTorque.LowGear(380, 3.5, ShaftTorque.ManualEfficiency, 1, 2.72).Value, 0.01);
        Assert.Equal(1130.5, ShaftTorque.LowGear(380, 3.5, ShaftTorque.ManualEfficiency, 1, null).Value, 0.01);
        Assert.Equal(1507.84, ShaftTorque.LowGear(380, 2.48, ShaftTorque.AutomaticEfficiency, 2.0, null).Value, 0.01);
    }

    // Worked example E9: 3500 lb, 15 in, 4.10 → 797.497 lb-ft = 1081 N·m.
    [Fact]
    public void Wheel_slip_torque()
        => Assert.Equal(797.497, ShaftTorque.WheelSlip(0.71, 3500 * 0.45359237, 15 * 0.0254, 4.10).Value / PoundFoot, 0.01);

    [Fact]
    public void A_shorter_axle_takes_torque_off_the_shaft_and_a_taller_tyre_puts_it_on()
        => Gen.Select(Gen.Double[300, 3000], Gen.Double[0.25, 0.5], Gen.Double[2, 7], Gen.Double[1.01, 2]).Sample((mass, radius, axle, factor) =>
        {
            var torque = ShaftTorque.WheelSlip(0.71, mass, radius, axle).Value;

            Assert.Equal(torque / factor, ShaftTorque.WheelSlip(0.71, mass, radius, axle * factor).Value, 1e-9 * torque);
            Assert.Equal(torque * factor, ShaftTorque.WheelSlip(0.71, mass, radius * factor, axle).Value, 1e-9 * torque * factor);
        });
}
