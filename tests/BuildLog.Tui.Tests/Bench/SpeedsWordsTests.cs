using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Tui.Bench;

namespace BuildLog.Tui.Tests.Bench;

public sealed class SpeedsWordsTests
{
    private static readonly Driveline Car = new()
    {
        Transmission = new("two-speed", [new("1", Exactly(2)), new("2", Exactly(1))]),
        RearAxle = new("axle", Exactly(4)),
        Tyres = new("tyres", Exactly(2), null),
    };

    // 1000 rev/min · 60 · 2 m / 4 = 30 km/h.
    [Fact]
    public void The_headline_speaks_of_top_gear()
        => Assert.StartsWith("30 km/h per 1000 rev/min in top (2)", Headline(Car), StringComparison.Ordinal);

    [Fact]
    public void An_overdrive_of_unknown_ratio_leaves_top_gear_unknown()
        => Assert.StartsWith("Top gear is not known: the overdrive's ratio is missing", Headline(Car with { Overdrive = new("unit", null) }), StringComparison.Ordinal);

    // 30 and 15 km/h per 1000 rev/min; first gear ± 0.01 of 15, top ± 3 of 30.
    [Fact]
    public void A_column_has_as_many_places_as_its_least_certain_number()
    {
        var loose = new Known(Measured.From(1, new Input("top gear", 0.05, new Evidence("word"))), Source.OwnersWord);
        var gears = Car with { Transmission = new("two-speed", [new("1", Exactly(2)), new("2", loose)]) };

        Assert.Equal(["15", "30"], SpeedsWords.Of(gears, OwnersGoals.None, UnitSystem.Metric).Rows.Select(row => row.Cells[1]));
        Assert.Equal(["15.0", "30.0"], SpeedsWords.Of(Car, OwnersGoals.None, UnitSystem.Metric).Rows.Select(row => row.Cells[1]));
    }

    private static string Headline(Driveline driveline) => SpeedsWords.Of(driveline, OwnersGoals.None, UnitSystem.Metric).Headline;

    private static Known Exactly(double value) => new(value, Source.Measured);
}
