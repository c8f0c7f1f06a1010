using BuildLog.Gearing.Drivelines;
using Microsoft.Data.Sqlite;
using Xunit;

namespace BuildLog.Data.Tests.Fitments;

/// <summary>Written past the program: axle 1 was on Brindle (1) from 3 May to 1 June 2026, axle 2 has been there since 1 July.</summary>
public sealed class GuardsInTheFile : IDisposable
{
    private readonly TestShop test = new();

    public GuardsInTheFile()
    {
        var (vehicle, one, two) = (test.Vehicle("Brindle"), test.Axle("one"), test.Axle("two"));
        _ = (test.Vehicle("Tansy"), test.Axle("three"));
        test.Shop.Fit(one, vehicle, Position.RearAxle, new(2026, 5, 3));
        test.Shop.TakeOff(one, new(2026, 6, 1));
        test.Shop.Fit(two, vehicle, Position.RearAxle, new(2026, 7, 1));
    }

    public void Dispose() => test.Dispose();

    [Theory]
    [InlineData(1, 2, "2026-05-10", "'2026-05-20'")]
    [InlineData(1, 2, "2026-04-01", "'2026-05-04'")]
    [InlineData(1, 2, "2026-05-31", "NULL")]
    [InlineData(3, 1, "2026-05-10", "'2026-05-20'")]
    [InlineData(3, 1, "2026-08-01", "NULL")]
    [InlineData(3, 1, "2026-06-15", "NULL")]
    [InlineData(2, 2, "2026-08-01", "'2026-08-02'")]
    public void Refuse_what_overlaps(int component, int vehicle, string from, string to)
    {
        var refused = Assert.Throws<SqliteException>(() => test.Ask(Insert(component, vehicle, from, to)));
        Assert.Equal(1811, refused.SqliteExtendedErrorCode);
    }

    [Theory]
    [InlineData(1, 2, "2026-06-01", "NULL")]
    [InlineData(1, 2, "2026-04-01", "'2026-05-03'")]
    [InlineData(3, 1, "2026-06-01", "'2026-07-01'")]
    public void Let_pass_what_only_touches(int component, int vehicle, string from, string to) => test.Ask(Insert(component, vehicle, from, to));

    [Fact]
    public void Refuse_a_change_that_would_overlap()
        => Assert.Throws<SqliteException>(() => test.Ask("UPDATE Fitments SET ToDate = NULL, ToOrder = NULL WHERE Id = 1"));

    [Fact]
    public void Refuse_a_fitment_that_ends_before_it_begins()
        => Assert.Equal(275, Assert.Throws<SqliteException>(() => test.Ask(Insert(3, 2, "2026-05-03", "'2026-05-02'"))).SqliteExtendedErrorCode);

    private static string Insert(int component, int vehicle, string from, string to)
        => $"""
            INSERT INTO Fitments (ComponentId, VehicleId, Position, FromDate, FromOrder, Reason, ToDate, ToOrder, ReasonOff, Uid, Version)
            VALUES ({component}, {vehicle}, 'RearAxle', '{from}', 1, '', {to}, {(to == "NULL" ? "NULL" : "1")}, '', 'u9', 0)
            """;
}
