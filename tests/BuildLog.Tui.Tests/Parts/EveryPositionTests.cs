using BuildLog.Data.Components;
using BuildLog.Data.Hunting;
using BuildLog.Data.Lists;
using BuildLog.Gearing.Drivelines;
using BuildLog.Tui.Commands;
using BuildLog.Tui.Hunting;
using BuildLog.Tui.Parts;
using BuildLog.Tui.Plans;
using BuildLog.Tui.Tests.Samples;

namespace BuildLog.Tui.Tests.Parts;

/// <summary>What can be done with a part of any kind, wherever it sits; a new place for parts finds here what it still lacks.</summary>
public sealed class EveryPositionTests : IDisposable
{
    private readonly SmallShop small = new();

    public static TheoryData<Position> Positions => [.. Enum.GetValues<Position>()];

    public void Dispose() => small.Dispose();

    [Theory]
    [MemberData(nameof(Positions))]
    public void A_part_is_entered_fitted_read_into_the_driveline_and_gone_without(Position position)
    {
        var part = small.Shop.Add(Entered(position));
        Assert.Contains(position, part.Positions);

        small.Shop.Fit(part, small.Bittern, position, new(2026, 5, 1));

        var fitted = small.Shop.DrivelineOn(small.Bittern, new(2026, 5, 2));
        Assert.Equal(part.Name, fitted.At(position)?.Name);
        Assert.NotEqual(fitted.Driveline, fitted.Driveline.Without(position));
    }

    [Theory]
    [MemberData(nameof(Positions))]
    public void A_part_is_listed_for_a_spreadsheet_and_read_back(Position position)
    {
        using var other = new SmallShop();
        using var list = new StringWriter();
        var part = small.Shop.Add(Entered(position));
        small.Shop.WriteList(ListOf.Parts, list);

        Assert.Equal(1, other.Shop.ReadList(ListOf.Parts, new StringReader(list.ToString())));

        Assert.IsType(part.GetType(), Assert.Single(other.Shop.Parts()).Component);
    }

    [Theory]
    [MemberData(nameof(Positions))]
    public void A_part_is_hunted_bought_and_kept_without_a_number(Position position)
    {
        var kind = WantedWindows.Kind(position);
        var part = BoughtPart.New(kind);
        Assert.Equal(kind == WantedKind.Other, part is null);
        if (part is null) return;

        Assert.Contains(position, part.Positions);
        Assert.NotEqual(0, small.Shop.Add(Named(part)).Id);
    }

    [Fact]
    public void A_what_if_asks_for_every_part_in_its_form_and_takes_it_from_the_command()
    {
        Assert.Equal(Enum.GetValues<Position>(), WhatIfForm.Asked.Select(asked => asked.Position).Order());
        Assert.Equal(Enum.GetValues<Position>(), WhatIfCommand.Places.Values.Distinct().Order());
    }

    private static Component Entered(Position position) => Named(PartEntries.For(position).New());

    // Wheels have a size, or they are none.
    private static Component Named(Component part)
    {
        part.Name = "from a donor";
        if (part is WheelSetComponent wheels) wheels.SizeText = "205/65R15";
        return part;
    }
}
