using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Propshafts;
using BuildLog.Gearing.RoadLoad;
using BuildLog.Gearing.RunningGear;
using BuildLog.Gearing.Speedometers;

namespace BuildLog.Gearing.Drivelines;

/// <summary>The parts of one vehicle on one day, read as a chain from engine to tyres; null where nothing is fitted.</summary>
public sealed record Driveline
{
    /// <summary>The engine.</summary>
    public Engine? Engine { get; init; }

    /// <summary>The gearbox, with its clutch or converter.</summary>
    public Transmission? Transmission { get; init; }

    /// <summary>A unit of its own behind the gearbox; an overdrive gear inside the box is one of its gears.</summary>
    public Overdrive? Overdrive { get; init; }

    /// <summary>The transfer case of a four-wheel drive.</summary>
    public TransferCase? TransferCase { get; init; }

    /// <summary>To the rear axle.</summary>
    public Propshaft? Propshaft { get; init; }

    /// <summary>To the front axle.</summary>
    public Propshaft? FrontPropshaft { get; init; }

    /// <summary>The rear axle, driven or dead.</summary>
    public Axle? RearAxle { get; init; }

    /// <summary>A driven front axle.</summary>
    public Axle? FrontAxle { get; init; }

    /// <summary>The wheels and tyres of all axles; front ones that differ are its <see cref="TyreSet.FrontPair"/>.</summary>
    public TyreSet? Tyres { get; init; }

    /// <summary>A set for the front wheels alone while nothing is known of the rear ones; beside a rear set it is that set's <see cref="TyreSet.FrontPair"/>.</summary>
    /// <remarks>Nothing is computed with it: the tyres of the other axle may be any.</remarks>
    public TyreSet? LoneFrontTyres { get; init; }

    /// <summary>The speedometer and what feeds it.</summary>
    public Speedometer? Speedometer { get; init; }

    /// <summary>The latest measured distance over which the odometer was watched; null where there was none.</summary>
    public DrivenDistance? Driven { get; init; }

    /// <summary>Numbers of these parts that were measured more than once.</summary>
    public IReadOnlyList<MeasuredAgain> MeasuredAgain { get; init; } = [];

    /// <summary>What each axle carries; null where it was never asked for.</summary>
    public AxleMasses? AxleMasses { get; init; }

    /// <summary>Where the chassis hangs its rear axle.</summary>
    public Hanging RearHanging { get; init; } = new();

    /// <summary>Where the chassis hangs its front axle.</summary>
    public Hanging FrontHanging { get; init; } = new();

    /// <summary>What it has to move; null where nothing is known of it.</summary>
    public VehicleLoad? Load { get; init; }

    /// <summary>Grip of its tyres: see <see cref="VehicleLoad.Grip"/>.</summary>
    public Known Grip => Load?.Grip ?? DryRoad.Grip;

    /// <summary>The computation follows the rear axle unless only the front one is there or the vehicle says it drives in front.</summary>
    public bool DrivesInFront { get; init; }

    /// <summary>The axle that road speeds are computed through.</summary>
    public Position DrivingPosition => RearAxle is null && FrontAxle is not null || DrivesInFront ? Position.FrontAxle : Position.RearAxle;

    /// <summary>Where the axle is that they are not computed through.</summary>
    public Position OtherPosition => DrivingPosition == Position.FrontAxle ? Position.RearAxle : Position.FrontAxle;

    /// <summary>The axle there; null where none is fitted.</summary>
    public Axle? DrivingAxle => AxleAt(DrivingPosition);

    /// <summary>The axle that they are not computed through; null where none is fitted there.</summary>
    public Axle? OtherAxle => AxleAt(OtherPosition);

    /// <summary>The axle in front, or else the one behind; null where none is fitted there.</summary>
    public Axle? AxleAt(Position position) => position == Position.FrontAxle ? FrontAxle : RearAxle;

    /// <summary>The same with nothing fitted there.</summary>
    public Driveline Without(Position position) => position switch
    {
        Position.Engine => this with { Engine = null },
        Position.Transmission => this with { Transmission = null },
        Position.Overdrive => this with { Overdrive = null },
        Position.TransferCase => this with { TransferCase = null },
        Position.Propshaft => this with { Propshaft = null },
        Position.FrontPropshaft => this with { FrontPropshaft = null },
        Position.RearAxle => this with { RearAxle = null },
        Position.FrontAxle => this with { FrontAxle = null },
        Position.Tyres => this with { Tyres = null, LoneFrontTyres = Tyres?.FrontPair ?? LoneFrontTyres },
        Position.FrontTyres => this with { Tyres = Tyres is null ? null : Tyres with { FrontPair = null }, LoneFrontTyres = null },
        Position.Speedometer => this with { Speedometer = null },
        _ => throw new ArgumentOutOfRangeException(nameof(position), position, "No such position."),
    };

    /// <summary>The pair of tyres on the driving axle.</summary>
    public TyreSet? DrivingTyres => Tyres?.On(DrivingPosition);

    /// <summary>What the driver can select, from the lowest gear to the top, an overdrive unit after the top gear.</summary>
    public IReadOnlyList<DriveStep> Steps
    {
        get
        {
            if (Transmission is not { Gears.Count: > 0 } box || !TransferKnown) return [];

            var steps = box.Gears.Select(gear => new DriveStep(gear.Name, gear.Ratio.Value, TransferHigh)).ToList();
            if (Overdrive?.Ratio is { } overdrive && box.Top is { } top)
                steps.Add(new($"{top.Name}+OD", top.Ratio.Value * overdrive.Value, TransferHigh)
                {
                    InWords = Spoken($"{top.Name} with overdrive"),
                    Overdrive = overdrive.Value,
                });
            return steps;
        }
    }

    /// <summary>The step of this name, or the top one for null; an overdrive unit of unknown ratio, or a gearbox whose top gear nobody told, leaves the top one unknown.</summary>
    public DriveStep? Step(string? name)
        => Steps is not { Count: > 0 } steps ? null
            : name is null ? (Overdrive is { Ratio: null } || Transmission!.Top is null ? null : steps[^1])
            : steps.FirstOrDefault(step => string.Equals(step.Name, name, StringComparison.OrdinalIgnoreCase));

    private bool TransferKnown => TransferCase is null || TransferCase.High is not null;

    private Measured TransferHigh => TransferCase?.High?.Value ?? 1;
}

/// <summary>One thing the driver can select.</summary>
/// <param name="Name">Such as <c>3</c> or <c>4+OD</c>.</param>
/// <param name="Gear">Gearbox ratio, with the overdrive where it is engaged.</param>
/// <param name="Transfer">Transfer case in high; one where there is none.</param>
public sealed record DriveStep(string Name, Measured Gear, Measured Transfer)
{
    /// <summary>The name in a sentence: <c>3</c> or <c>4 with overdrive</c>.</summary>
    public string InWords { get; init; } = Name;

    /// <summary>The part of <see cref="Gear"/> that a unit behind the gearbox makes; one where none is engaged.</summary>
    public Measured Overdrive { get; init; } = 1;

    /// <summary>Engine turns per propshaft turn.</summary>
    public Measured Ratio => Gear * Transfer;
}
