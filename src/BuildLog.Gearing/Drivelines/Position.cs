namespace BuildLog.Gearing.Drivelines;

/// <summary>Where on a vehicle a part is fitted, from engine to tyres.</summary>
public enum Position
{
    /// <summary>The engine.</summary>
    Engine,
    /// <summary>The gearbox.</summary>
    Transmission,
    /// <summary>A separate overdrive unit.</summary>
    Overdrive,
    /// <summary>The transfer case.</summary>
    TransferCase,
    /// <summary>The shaft to the rear axle.</summary>
    Propshaft,
    /// <summary>The shaft to the front axle.</summary>
    FrontPropshaft,
    /// <summary>The rear axle; in words, the axle.</summary>
    RearAxle,
    /// <summary>A driven front axle.</summary>
    FrontAxle,
    /// <summary>The wheels and tyres, of all axles or of the rear one.</summary>
    Tyres,
    /// <summary>Wheels and tyres of the front axle where they differ.</summary>
    FrontTyres,
    /// <summary>The speedometer.</summary>
    Speedometer,
}

/// <summary>Positions as the trade says them.</summary>
public static class PositionWords
{
    /// <summary>The trade's word, as screens, sheets and JSON have it.</summary>
    public static string InWords(this Position position) => position switch
    {
        Position.Engine => "engine",
        Position.Transmission => "gearbox",
        Position.Overdrive => "overdrive",
        Position.TransferCase => "transfer case",
        Position.Propshaft => "propshaft",
        Position.FrontPropshaft => "front propshaft",
        Position.RearAxle => "axle",
        Position.FrontAxle => "front axle",
        Position.Tyres => "tyres",
        Position.FrontTyres => "front tyres",
        Position.Speedometer => "speedometer",
        _ => throw new ArgumentOutOfRangeException(nameof(position), position, "No such position."),
    };
}
