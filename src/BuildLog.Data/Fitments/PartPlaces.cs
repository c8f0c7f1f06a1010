namespace BuildLog.Data.Fitments;

/// <summary>Where the parts are.</summary>
internal static class PartPlaces
{
    public static IReadOnlyList<PartPlace> Now(ShopContext db)
    {
        var fitted = db.Fitments.Where(fitment => fitment.To == null).ToDictionary(fitment => fitment.ComponentId);
        return
        [
            .. db.Components.AsEnumerable()
                .Select(component => new PartPlace(component, fitted.GetValueOrDefault(component.Id)))
                .OrderBy(part => part.Component.Positions[0])
                .ThenBy(part => part.Component.Name, StringComparer.InvariantCultureIgnoreCase)
                .ThenBy(part => part.Component.Id),
        ];
    }
}
