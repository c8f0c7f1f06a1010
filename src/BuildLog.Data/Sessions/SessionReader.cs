using BuildLog.Data.Rows;
using BuildLog.Gearing.Ratios;
using BuildLog.Gearing.RunningGear;
using BuildLog.Gearing.Tyres;

namespace BuildLog.Data.Sessions;

/// <summary>Reads sessions of every kind by hand, each with its readings, its part and its vehicle. Whatever column a kind gets, it is read here.</summary>
internal static class SessionReader
{
    private const string ReadingsSql =
        """
        SELECT * FROM "Readings" WHERE "SessionId" IN (SELECT value FROM json_each($ids)) ORDER BY "SessionId", "Ordinal"
        """;

    public static IReadOnlyList<Session> Joined(Snapshot record, IReadOnlyList<Session> sessions)
    {
        var byId = sessions.ToDictionary(session => session.Id);
        foreach (var reading in record.Rows.Read(ReadingsSql, ReadingFrom, byId.Keys)) byId[reading.SessionId].Rows.Add(reading);
        record.Components.Load(sessions.Select(session => session.ComponentId));
        record.Vehicles.Load(sessions.Select(session => session.VehicleId));
        foreach (var session in sessions)
        {
            session.Component = record.Components.Named(session.ComponentId);
            session.Vehicle = record.Vehicles.Named(session.VehicleId);
        }

        return sessions;
    }

    public static Session From(Row row)
    {
        var session = row.Kept<Session>(row.Text("Method") switch
        {
            "turn count" => TurnCount(row),
            "gear count" => GearCount(row),
            "roll-out" => RollOut(row),
            "teeth" => new TeethSession(),
            "loaded radius" => new LoadedRadiusSession { Tape = row.Text("Tape") },
            "bolt circle" => new BoltCircleSession { Studs = row.Count("Studs"), Between = row.Word<Chord>("Between"), Tape = row.Text("Tape") },
            "shaft angles" => new ShaftAnglesSession(),
            "weighbridge" => new WeighbridgeSession { Step = row.Text("Step") },
            "speedometer run" => new SpeedometerRunSession { Tape = row.Text("Tape"), Step = row.Text("Step") },
            var method => throw new FormatException($"There is no method '{method}'."),
        });
        session.Date = row.Day("Date");
        session.DateAsTyped = row.LooseDay("DateAsTyped");
        session.Helper = row.Text("Helper");
        session.Conditions = row.Text("Conditions");
        session.Notes = row.Text("Notes");
        session.ComponentId = row.KeyIfAny("ComponentId");
        session.VehicleId = row.KeyIfAny("VehicleId");
        return session;
    }

    private static TurnCountSession TurnCount(Row row) => new()
    {
        Wheels = row.Word<Wheels>("Wheels"),
        ReadTo = row.Text("ReadTo"),
        Align = row.Text("Align"),
        Hub = row.Text("Hub"),
    };

    private static GearCountSession GearCount(Row row) => new()
    {
        Gear = row.Text("Gear"),
        ReadTo = row.Text("ReadTo"),
        Align = row.Text("Align"),
    };

    private static RollOutSession RollOut(Row row) => new()
    {
        Loaded = row.Flag("Loaded"),
        Construction = row.Word<Construction>("Construction"),
        Tape = row.Text("Tape"),
        Align = row.Text("Align"),
        Pressure = row.Text("Pressure"),
    };

    private static ReadingRow ReadingFrom(Row row) => new()
    {
        Id = row.Key("Id"),
        SessionId = row.Key("SessionId"),
        Ordinal = row.Count("Ordinal"),
        Text = row.Text("Text"),
    };
}
