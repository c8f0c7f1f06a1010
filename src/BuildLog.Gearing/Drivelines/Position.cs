namespace BuildLog.Gearing.Drivelines;

/// <summary>Where on a vehicle a part is fitted, from engine to tyres.</summary>
public enum Position
{
    Engine,
    Transmission,
    Overdrive,
    TransferCase,
    Propshaft,
    FrontPropshaft,
    RearAxle,
    FrontAxle,
    Tyres,
    FrontTyres,
    Speedometer,
}

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
