using BuildLog.Data.Rows;

namespace BuildLog.Data.Fitments;

/// <summary>Where the parts are.</summary>
internal static class PartPlaces
{
    public static IReadOnlyList<PartPlace> Now(Snapshot record)
    {
        var all = record.Rows.Read("SELECT Id FROM Components", row => row.Key("Id"));
        record.Components.Load(all.Select(id => (long?)id));
        var fitted = FitmentReader.Now(record).ToDictionary(fitment => fitment.ComponentId);
        return
        [
            .. all
                .Select(id => new PartPlace(record.Components[id], fitted.GetValueOrDefault(id)))
                .OrderBy(part => part.Component.Positions[0])
                .ThenBy(part => part.Component.Name, StringComparer.InvariantCultureIgnoreCase)
                .ThenBy(part => part.Component.Id),
        ];
    }
}
