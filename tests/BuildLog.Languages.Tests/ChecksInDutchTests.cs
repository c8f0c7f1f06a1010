using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Languages;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Propshafts;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Languages.Tests;

/// <summary>The verdicts do not depend on the language they are told in, nor on the one the shop writes its words in.</summary>
public sealed class ChecksInDutchTests : IDisposable
{
    private readonly IDisposable spoken = Language.Dutch.Speak();

    public void Dispose() => spoken.Dispose();

    [Theory]
    [InlineData("27 splines", "27 splines, 33 mm")]
    [InlineData("27 spiebanen", "27 spiebanen, 33 mm")]
    public void A_slip_yoke_with_as_many_splines_is_tried_on(string output, string frontEnd)
    {
        var finding = Assert.Single(Look(new() { Transmission = new("bak", []) { Output = output }, Propshaft = new("as", new ShaftPiece()) { FrontEnd = frontEnd } }), finding => finding.Check == "output-flange");

        Assert.Equal(Verdict.Watch, finding.Verdict);
        Assert.Contains("uitgang van de bak", finding.SaysIn(unit => unit), StringComparison.Ordinal);
    }

    // The window of a wanted gearbox is of its top gear, whatever that is called.
    [Fact]
    public void The_window_of_the_gear_it_cruises_in_is_known_as_such()
    {
        var car = new Driveline
        {
            Transmission = new("bak", [new("1", Exactly(3)), new("2", Exactly(1))]),
            RearAxle = new("as", Exactly(4)),
            Tyres = new("banden", Exactly(2), null),
        };
        var engineSpeed = CruiseGoal.ReadEngineSpeed("2500").OrRefuse();
        var goal = new CruiseGoal(CruiseGoal.ReadSpeed("110 km/h").OrRefuse(), engineSpeed, CruiseGoal.ReadTolerance("5 %", engineSpeed).OrRefuse(), null);

        var windows = AllChecks.Look(car, OwnersGoals.None with { Cruise = [goal] }).Single(finding => finding.Check == "cruise").Windows;
        Assert.True(windows.Single(window => window.Position == Position.Transmission).IsOfTopGear);
        Assert.False(windows.Single(window => window.Position == Position.RearAxle).IsOfTopGear);
    }

    [Fact]
    public void An_engine_speed_is_typed_as_it_is_shown()
        => Assert.Equal(2500 / 60.0, QuantityText.Read(Rounded.Value(new Known(2500 / 60.0, Source.Measured).Value, Units.RevolutionPerMinute), Kind.Rotation).OrRefuse().Value, 1e-9);

    // 3.455 typed with a comma could be three thousand; what is put into an entry has the point.
    [Fact]
    public void A_number_for_an_entry_is_read_again()
    {
        Assert.Equal("3,455", Rounded.Exact(3.455));
        Assert.Equal(3.455, QuantityText.ReadNumber(Rounded.Typed(3.455)).OrRefuse());
        Assert.All(((string[])[new Window(2.855, 3.205).Written(Units.One).Low, new Window(1.8621, 2.0).Written(Units.Metre).High]), text => Assert.DoesNotContain(',', text));
    }

    private static IReadOnlyList<Finding> Look(Driveline driveline) => AllChecks.Look(driveline, OwnersGoals.None);

    private static Known Exactly(double value) => new(value, Source.Measured);
}
