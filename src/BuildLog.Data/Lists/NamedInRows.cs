using BuildLog.Data.Costs;
using BuildLog.Data.Hunting;
using BuildLog.Data.Jobs;
using BuildLog.Data.Suppliers;
using BuildLog.Data.Vehicles;
using BuildLog.Data.Workshops;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Data.Lists;

/// <summary>What the rows of a list name, read from the record once for all of them.</summary>
/// <param name="db">The record.</param>
/// <param name="only">The vehicle that the rows are about where they name none; null for any.</param>
internal sealed class NamedInRows(ShopContext db, Vehicle? only)
{
    /// <summary>Of a bare number.</summary>
    public Currency Currency => field ??= db.Set<Workshop>().SingleOrDefault()?.Bare ?? Currency.Euro;

    private IReadOnlyList<Vehicle> Vehicles => field ??= [.. db.Vehicles];

    private ILookup<string, Job> Jobs => field ??= db.Set<Job>().ToLookup(job => job.Title, StringComparer.OrdinalIgnoreCase);

    private ILookup<string, WantedPart> WantedParts
        => field ??= db.Set<WantedPart>().Where(part => only == null || part.VehicleId == only.Id).ToLookup(part => part.Title, StringComparer.OrdinalIgnoreCase);

    private Dictionary<string, long> Suppliers
        => field ??= db.Set<Supplier>().OrderByDescending(supplier => supplier.Id).AsEnumerable().GroupBy(supplier => supplier.Name, StringComparer.OrdinalIgnoreCase)
            .ToDictionary(alike => alike.Key, alike => alike.Last().Id, StringComparer.OrdinalIgnoreCase);

    /// <exception cref="RefusedException">There is none, or several.</exception>
    public Vehicle Vehicle(string name) => name.Trim().Length == 0 && only is not null ? only : VehicleList.Find(Vehicles, name);

    /// <exception cref="RefusedException">The vehicle has none of this title.</exception>
    public Job? Job(Vehicle on, string title)
        => title.Trim().Length == 0 ? null
            : Jobs[title.Trim()].FirstOrDefault(job => job.VehicleId == on.Id) ?? throw new RefusedException("job", Spoken($"{on} has no job {Shown.Quoted(title)}."), "");

    /// <exception cref="RefusedException">There is none of this title, or several.</exception>
    public WantedPart WantedPart(string title) => WantedParts[title.Trim()].ToList() switch
    {
        [var part] => part,
        [] => throw new RefusedException("wanted", Spoken($"no wanted part is called {Shown.Quoted(title)}."), ""),
        _ => throw new RefusedException("wanted", Spoken($"several wanted parts are called {Shown.Quoted(title)}: name the vehicle."), ""),
    };

    /// <summary>Names repeat down a column: the first row that names a supplier makes it.</summary>
    public long? Supplier(string name)
    {
        if (name.Trim().Length == 0) return null;
        if (Suppliers.TryGetValue(name.Trim(), out var known)) return known;

        var added = Entries.Add(db, new Supplier { Name = name });
        db.SaveChanges();
        return Suppliers[name.Trim()] = added.Id;
    }

    public Money? Money(string text) => text.Trim().Length == 0 ? null : MoneyText.Read(text, Currency).OrRefuse();

    /// <summary><c>60.00 EUR</c> for <c>60 €</c>; what is no money stays as it is.</summary>
    public string Spelt(string money) => MoneyText.Read(money, Currency).Understood(out var amount) ? amount.ToString() : money.Trim();
}
