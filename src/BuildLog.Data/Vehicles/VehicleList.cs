using System.Globalization;
using System.Text;
using BuildLog.Data.Rows;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Data.Vehicles;

/// <summary>The vehicles by name.</summary>
internal static class VehicleList
{
    /// <summary>All vehicles by name.</summary>
    /// <remarks>Names in plain letters need no tables of all languages, which take longer to load than the list.</remarks>
    public static IReadOnlyList<Vehicle> All(Snapshot record)
    {
        var vehicles = VehicleReader.All(record);
        vehicles.Sort(vehicles.TrueForAll(vehicle => Ascii.IsValid(vehicle.Name))
            ? (a, b) => string.Compare(a.Name, b.Name, StringComparison.OrdinalIgnoreCase)
            : (a, b) => CultureInfo.InvariantCulture.CompareInfo.Compare(a.Name, b.Name, CompareOptions.IgnoreCase));
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
            (0, _) => throw Refused(Spoken("The shop has no vehicles yet; add one first."), ""),
            (_, 1) when key.Length > 0 => matches[0],
            (_, 0) => throw Refused(Spoken($"No vehicle is called {Shown.Quoted(beginning)} or begins so; there are {Names(vehicles)}."), example),
            _ => throw Refused(Spoken($"{Shown.Quoted(beginning)} could be {Names(matches)}: write more of the name."), matches[0].Name),
        };
    }

    private static RefusedException Refused(string message, string example) => new("vehicle", message, example);

    private static string Names(IReadOnlyList<Vehicle> vehicles)
    {
        const int most = 8;
        var shown = vehicles.Take(most).Select(vehicle => vehicle.Name).ToList();
        if (vehicles.Count > most) shown.Add(Spoken($"{vehicles.Count - most} more"));
        return shown.Count == 1 ? shown[0] : Spoken($"{string.Join(", ", shown.SkipLast(1))} and {shown[^1]}");
    }
}
