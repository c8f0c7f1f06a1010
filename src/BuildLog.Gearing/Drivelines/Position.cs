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
        Position.Engine => Spoken("engine"),
        Position.Transmission => Spoken("gearbox"),
        Position.Overdrive => Spoken("overdrive"),
        Position.TransferCase => Spoken("transfer case"),
        Position.Propshaft => Spoken("propshaft"),
        Position.FrontPropshaft => Spoken("front propshaft"),
        Position.RearAxle => Spoken("axle"),
        Position.FrontAxle => Spoken("front axle"),
        Position.Tyres => Spoken("tyres"),
        Position.FrontTyres => Spoken("front tyres"),
        Position.Speedometer => Spoken("speedometer"),
        _ => throw new ArgumentOutOfRangeException(nameof(position), position, "No such position."),
    };
}
