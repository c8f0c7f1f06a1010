using BuildLog.Data.Components;
using BuildLog.Data.Drivelines;
using BuildLog.Data.Specs;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Ratios;
using Xunit;

namespace BuildLog.Data.Tests.Drivelines;

/// <summary>Beside the cruise. Axle 4.00 on 2 m a turn; the cable turns once for two turns of the propshaft, once a metre, and the dial wants 1000 a kilometre.</summary>
public sealed class WhatASwapMoves : IDisposable
{
    private readonly TestShop test = new();
    private readonly Vehicle vehicle;

    public WhatASwapMoves()
    {
        vehicle = test.Vehicle("Brindle");
        test.Shop.Fit(test.Shop.Add(new AxleComponent { Name = "low", Teeth = new Teeth(40, 10) }), vehicle, Position.RearAxle, new(2026, 1, 1));
        test.Shop.Fit(Wheels("narrow", "205/65R15", "25 mm"), vehicle, Position.Tyres, new(2026, 1, 2));
    }

    public void Dispose() => test.Dispose();

    // A 3.00 axle turns the propshaft three quarters as fast: 75 km/h at a true 100. No wheel has moved.
    [Fact]
    public void Another_axle_moves_the_speedometer()
    {
        var meter = new SpeedometerComponent { Name = "meter", TurnsWanted = Noted.Of(Spec.TurnsWanted, "1000", Source.Tag), Per = OdometerUnit.Kilometres, DriveTeeth = 8, DrivenTeeth = 16 };
        test.Shop.Fit(test.Shop.Add(meter), vehicle, Position.Speedometer, new(2026, 1, 3));
        test.Shop.Fit(test.Shop.Add(new AxleComponent { Name = "high", Teeth = new Teeth(36, 12) }), vehicle, Position.RearAxle, new(2026, 2, 1));

        var moves = Last();
        Assert.Equal((100, 75), (Kmh(moves.ShownBefore), Kmh(moves.ShownAfter)));
        Assert.Null(moves.Track);
        Assert.Null(moves.Stall);
    }

    // ET 25 to ET 0: 2 · 25 = 50 mm wider. 20 mm more tyre: 10 + 25 = 35 mm out, 10 − 25 = −15 mm in.
    [Fact]
    public void Other_wheels_move_the_track_and_both_side_walls()
    {
        test.Shop.Fit(Wheels("wide", "225/60R15", "0 mm"), vehicle, Position.Tyres, new(2026, 2, 1));

        var moves = Last();
        Assert.Equal(0.050, moves.Track!.Value, 1e-12);
        Assert.Equal(0.035, moves.OuterEdge!.Value, 1e-12);
        Assert.Equal(-0.015, moves.InnerEdge!.Value, 1e-12);
        Assert.Null(moves.ShownAfter);
    }

    // 1.44 times the torque: √1.44 · 2000 = 2400 rev/min.
    [Fact]
    public void Another_engine_moves_the_converters_stall()
    {
        test.Shop.Fit(Engine("four", 200), vehicle, Position.Engine, new(2026, 1, 3));
        var box = new TransmissionComponent { Name = "automatic", ConverterLocksUp = false, StallSpeed = Noted.Of(Spec.StallSpeed, "2000 rpm", Source.MakersData) };
        test.Shop.Fit(test.Shop.Add(box), vehicle, Position.Transmission, new(2026, 1, 4));
        test.Shop.Fit(Engine("six", 288), vehicle, Position.Engine, new(2026, 2, 1));

        Assert.Equal(2400 / 60.0, Last().Stall!.Value, 1e-9);
    }

    private static int? Kmh(Measured? speed) => speed is null ? null : (int)Math.Round(speed.Value * 3.6);

    private SwapMoves Last() => test.Shop.History(vehicle)[^1].Effect(test.Shop.GoalsOf(vehicle)).Moves;

    private WheelSetComponent Wheels(string name, string size, string offset) => test.Shop.Add(new WheelSetComponent
    {
        Name = name,
        SizeText = size,
        StatedCircumference = Noted.Length("2.000 m", Source.Measured),
        Offset = Noted.Of(Spec.Offset, offset, Source.Measured),
    });

    private EngineComponent Engine(string name, int torque) => test.Shop.Add(new EngineComponent
    {
        Name = name,
        TorquePoints = Noted.Of(Spec.TorquePoints, FormattableString.Invariant($"1000:{torque} Nm; 5000:{torque} Nm"), Source.Measured),
    });
}
