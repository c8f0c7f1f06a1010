using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Propshafts;
using BuildLog.Gearing.Tests.Drivelines;
using Xunit;

namespace BuildLog.Gearing.Tests.Checks;

/// <remarks>Source of the limit: geometry: the same words fit, other words clash.</remarks>
public sealed class OutputFlangeCheckTests
{
    [Fact]
    public void The_propshaft_goes_to_the_last_unit_before_it()
    {
        var behindBox = Behind("flange 4 x 80 mm", "flange 4 × 80 mm");

        Assert.Equal(Verdict.Fits, CheckCase.Find(new OutputFlangeCheck(), behindBox).Verdict);
        var behindUnit = CheckCase.Find(new OutputFlangeCheck(), behindBox with { Overdrive = new("unit", null) { Output = "flange 4 × 76 mm" } });
        Assert.Equal((Verdict.Clash, Position.Overdrive), (behindUnit.Verdict, behindUnit.Between[0]));
        Assert.Equal(["a propshaft whose front end is flange 4 × 76 mm"], behindUnit.Cures);
    }

    [Fact]
    public void A_transfer_case_has_an_output_for_each_shaft()
    {
        var shaft = new Propshaft("shaft", new ShaftPiece()) { FrontEnd = "A" };
        var car = InventedCar.Plain with { TransferCase = new("case", null, null) { Output = "A", FrontOutput = "B" }, Propshaft = shaft, FrontPropshaft = shaft };

        Assert.Equal([Verdict.Fits, Verdict.Clash], CheckCase.Look(new OutputFlangeCheck(), car).Select(finding => finding.Verdict));
    }

    [Fact]
    public void A_slip_yoke_with_as_many_splines_is_tried_on()
        => Assert.Equal(Verdict.Watch, CheckCase.Find(new OutputFlangeCheck(), Behind("27 splines", "27 splines, 33 mm")).Verdict);

    private static Driveline Behind(string output, string frontEnd) => InventedCar.Plain with
    {
        Transmission = InventedCar.Plain.Transmission! with { Output = output },
        Propshaft = new("shaft", new ShaftPiece()) { FrontEnd = frontEnd },
    };
}
