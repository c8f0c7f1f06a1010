using System.Globalization;
using BuildLog.Data.Files;
using BuildLog.Data.Specs;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using Microsoft.Data.Sqlite;

namespace BuildLog.Data.Vehicles;

/// <summary>Reads the vehicles by hand: the first screen and the command line wait for this, and loading the object mapper takes longer than all else.</summary>
internal static class VehicleList
{
    private const string Sql =
        """
        SELECT "Id", "Uid", "Version", "Name", "State", "Owner", "ChassisNumber", "Registration", "DrivesInFront", "OdometerUnit", "Notes", "BodyClass", "RollingClass"
        FROM "Vehicles"
        """;

    private const string SpecsSql =
        """
        SELECT "VehicleId", "Spec", "NumberText", "NumberSource", "Id"
        FROM "Specs" WHERE "VehicleId" IS NOT NULL
        """;

    /// <summary>All vehicles by name.</summary>
    public static IReadOnlyList<Vehicle> Read(string path)
    {
        using var connection = new SqliteConnection(ShopConnection.StringFor(path));
        connection.Open();

        // Both questions are answered from one state of the file.
        using var reading = connection.BeginTransaction(deferred: true);
        using var command = connection.CreateCommand();
        command.Transaction = reading;
        command.CommandText = Sql;
        var vehicles = new List<Vehicle>();
        using (var row = command.ExecuteReader())
        {
            while (row.Read()) vehicles.Add(From(row));
        }

        command.CommandText = SpecsSql;
        using (var row = command.ExecuteReader())
        {
            var byId = vehicles.ToDictionary(vehicle => vehicle.Id);
            while (row.Read()) byId[row.GetInt64(0)].Specs.Add(SpecFrom(row));
        }

        vehicles.Sort((a, b) => CultureInfo.InvariantCulture.CompareInfo.Compare(a.Name, b.Name, CompareOptions.IgnoreCase));
        return vehicles;
    }

    /// <summary>The vehicle of this name, or the only one whose name begins so.</summary>
    /// <exception cref="RefusedException">None or several.</exception>
    public static Vehicle Find(IReadOnlyList<Vehicle> vehicles, string beginning)
    {
        var key = Vehicle.KeyOf(beginning);
        if (vehicles.FirstOrDefault(vehicle => vehicle.NameKey == key) is { } exact) return exact;

        var example = vehicles.Count > 0 ? vehicles[0].Name : "Brindle";
        var matches = key.Length == 0 ? vehicles : vehicles.Where(vehicle => vehicle.NameKey.StartsWith(key, StringComparison.Ordinal)).ToList();
        return (vehicles.Count, matches.Count) switch
        {
            (0, _) => throw Refused("The shop has no vehicles yet; add one first.", ""),
            (_, 1) when key.Length > 0 => matches[0],
            (_, 0) => throw Refused($"No vehicle is called {Shown.Quoted(beginning)} or begins so; there are {Names(vehicles)}.", example),
            _ => throw Refused($"{Shown.Quoted(beginning)} could be {Names(matches)}: write more of the name.", matches[0].Name),
        };
    }

    private static RefusedException Refused(string message, string example) => new("vehicle", message, example);

    private static string Names(IReadOnlyList<Vehicle> vehicles)
    {
        const int most = 8;
        var shown = vehicles.Take(most).Select(vehicle => vehicle.Name).ToList();
        if (vehicles.Count > most) shown.Add(FormattableString.Invariant($"{vehicles.Count - most} more"));
        return shown.Count == 1 ? shown[0] : $"{string.Join(", ", shown.SkipLast(1))} and {shown[^1]}";
    }

    private static Vehicle From(SqliteDataReader row) => new()
    {
        Id = row.GetInt64(0),
        Uid = row.GetGuid(1),
        Version = row.GetInt64(2),
        Name = row.GetString(3),
        State = Enum.Parse<VehicleState>(row.GetString(4)),
        Owner = row.GetString(5),
        ChassisNumber = row.GetString(6),
        Registration = row.GetString(7),
        DrivesInFront = row.GetBoolean(8),
        OdometerUnit = Enum.Parse<OdometerUnit>(row.GetString(9)),
        Notes = row.GetString(10),
        BodyClass = row.IsDBNull(11) ? null : row.GetString(11),
        RollingClass = row.IsDBNull(12) ? null : row.GetString(12),
    };

    // The text is what counts; the value follows from it.
    private static SpecRow SpecFrom(SqliteDataReader row)
    {
        var spec = Enum.Parse<Spec>(row.GetString(1));
        return new()
        {
            Id = row.GetInt64(4),
            VehicleId = row.GetInt64(0),
            Spec = spec,
            Number = Noted.Of(spec, row.GetString(2), Enum.Parse<Source>(row.GetString(3))),
        };
    }
}
