namespace BuildLog.Tui.Measurements;

/// <summary>A way of measuring, and what has to be fitted for it.</summary>
/// <param name="Words">What it is called.</param>
/// <param name="Needs">What to do first where it cannot be done.</param>
public sealed record SessionKind(string Words, string Needs)
{
    public static SessionKind TurnCount => new(Spoken("turn count of an axle"), FitAxle);

    public static SessionKind Teeth => new(Spoken("teeth of an axle"), FitAxle);

    public static SessionKind Gear => new(Spoken("a gear of the gearbox"), Spoken("fit a gearbox first (f)"));

    public static SessionKind Overdrive => new(Spoken("the overdrive unit"), Spoken("fit an overdrive unit first (f)"));

    public static SessionKind RollOut => new(Spoken("roll-out of the tyres"), FitTyres);

    public static SessionKind LoadedRadius => new(Spoken("loaded radius of the tyres"), FitTyres);

    public static SessionKind ShaftAngles => new(Spoken("angles of a propshaft"), Spoken("fit one of one piece first (f)"));

    public static SessionKind BoltCircle => new(Spoken("bolt circle of axle or wheels"), Spoken("fit an axle or wheels first (f)"));

    public static SessionKind Weighbridge => new(Spoken("weighbridge"), "");

    public static SessionKind RoadTest => new(Spoken("road test"), "");

    public static SessionKind SpeedometerRun => new(Spoken("speedometer run"), "");

    /// <summary>All, as they are offered.</summary>
    public static IReadOnlyList<SessionKind> All => [TurnCount, Teeth, Gear, Overdrive, RollOut, LoadedRadius, ShaftAngles, BoltCircle, Weighbridge, RoadTest, SpeedometerRun];

    private static string FitAxle => Spoken("fit an axle first (f)");

    private static string FitTyres => Spoken("fit tyres first (f)");
}
