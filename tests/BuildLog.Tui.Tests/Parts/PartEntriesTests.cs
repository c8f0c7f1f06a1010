using BuildLog.Gearing.Drivelines;
using BuildLog.Tui.Forms;
using BuildLog.Tui.Parts;

namespace BuildLog.Tui.Tests.Parts;

/// <summary>What stands under an entry of a part's form: what cannot be, and what was understood.</summary>
public sealed class PartEntriesTests
{
    [Fact]
    public void A_wall_thicker_than_its_tube_is_refused_under_the_wall_of_that_piece()
    {
        (string, string)[] typed = [("pieces", "2"), ("one-outer", "76 mm"), ("one-wall", "2.1 mm"), ("two-outer", "63 mm"), ("two-wall", "40 mm")];

        Assert.Null(Message(Position.Propshaft, "one-wall", typed));
        Assert.Contains("63 mm tube", Message(Position.Propshaft, "two-wall", typed), StringComparison.Ordinal);
    }

    [Fact]
    public void A_spline_that_stands_out_further_than_its_stroke_is_refused_where_that_is_typed()
        => Assert.Contains("(95 mm)", Message(Position.Propshaft, "SlipOut", ("SlipStroke", "90 mm"), ("SlipOut", "95 mm")), StringComparison.Ordinal);

    [Fact]
    public void More_wear_than_a_tread_has_is_refused_under_the_wear()
        => Assert.NotNull(Message(Position.Tyres, "worn", ("size", "205/65R15"), ("worn", "90 mm")));

    [Theory]
    [InlineData("3.56,2.12,1.38,1.00")]
    [InlineData("3.56, 2.12, 1.38, 1.00")]
    [InlineData("3,56 2,12 1,38 1,00")]
    public void Ratios_are_parted_by_blanks_or_by_commas_where_these_are_no_decimal_marks(string typed)
    {
        var gears = PartEntries.For(Position.Transmission).Entries(PartEntries.For(Position.Transmission).New()).Single(entry => entry.Id == "gears");

        Assert.Equal("4 gears", gears.Echo!(new FormValues(new Dictionary<string, string> { ["gears"] = typed })));
    }

    [Theory]
    [InlineData(Position.Tyres, "circumference", "3/32 in", "0.8 to 6 m")]
    [InlineData(Position.Engine, "redline", "600 rpm", "above the idle speed", "idle", "800 rpm")]
    [InlineData(Position.TransferCase, "low", "0.9", "larger ratio", "high", "1.00")]
    [InlineData(Position.Transmission, "gears", "3.2 1.4 2.0", "from the lowest to the top")]
    [InlineData(Position.Transmission, "teeth", "29/19 31/14 1", "of 2 gears", "gears", "3.37 2.09 1.00")]
    public void What_the_record_would_refuse_of_a_part_is_said_where_it_is_typed(Position position, string entry, string text, string said, string beside = "", string other = "")
    {
        (string, string)[] typed = beside.Length == 0 ? [("part", "from the shed"), (entry, text)] : [("part", "from the shed"), (entry, text), (beside, other)];

        Assert.Contains(said, Message(position, entry, typed), StringComparison.Ordinal);
        Assert.Null(Message(position, "donor", typed));
    }

    [Theory]
    [InlineData(Position.Propshaft, "one-wall", "2.1", "Example: 2.1 mm")]
    [InlineData(Position.Propshaft, "one-length", "1.3", "Example: 1.30 m")]
    [InlineData(Position.Tyres, "LoadedRadius", "312", "Example: 312 mm")]
    [InlineData(Position.Tyres, "worn", "3 miles an hour", "Example: 3 mm")]
    public void A_refused_length_shows_one_of_its_own_size(Position position, string entry, string text, string example)
        => Assert.EndsWith(example, Message(position, entry, (entry, text)), StringComparison.Ordinal);

    // 1 kW = 1000 N·m/s; 210 N·m at 3000 rev/min are 210 × 2π × 50 = 66 kW, 180 at 1500 are 28.
    [Fact]
    public void Torque_points_are_counted_and_their_peaks_named()
        => Assert.Equal("2 points, most 210 N·m at 3000 rev/min, 66 kW at 3000 rev/min", Echo(Position.Engine, "TorquePoints", ("TorquePoints", "1500:180 Nm; 3000:210 Nm")));

    // 25.4 mm are one inch.
    [Fact]
    public void A_propshaft_tube_is_told_in_the_other_units_too()
        => Assert.Equal("= 3 in", Echo(Position.Propshaft, "one-outer", ("one-outer", "76.2 mm")));

    private static string? Message(Position position, string entry, params (string, string)[] typed) => Of(position, entry).Check!(Values(position, typed));

    private static string? Echo(Position position, string entry, params (string, string)[] typed) => Of(position, entry).Echo!(Values(position, typed));

    private static Entry Of(Position position, string entry) => Entries(position).Single(each => each.Id == entry);

    private static IReadOnlyList<Entry> Entries(Position position) => PartEntries.For(position).Entries(PartEntries.For(position).New());

    private static FormValues Values(Position position, IEnumerable<(string Entry, string Text)> typed)
    {
        var texts = Entries(position).ToDictionary(entry => entry.Id, entry => entry.Initial, StringComparer.Ordinal);
        foreach (var (entry, text) in typed) texts[entry] = text;
        return new(texts);
    }
}
