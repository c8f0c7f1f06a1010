using System.Globalization;
using Microsoft.EntityFrameworkCore.Metadata;

namespace BuildLog.Data.Tests.Rows;

/// <summary>All that the object mapper knows of a record, a line for each column, with what hangs on it.</summary>
/// <remarks>The mapper itself is asked what there is, so that a new column needs no word here.</remarks>
internal sealed class AsMapped(ShopContext db)
{
    /// <summary>All columns that were come across.</summary>
    public HashSet<string> Met { get; } = [];

    /// <summary>Those of them that held something that is not there by itself.</summary>
    public HashSet<string> Filled { get; } = [];

    public IReadOnlyList<string> Lines(IEnumerable<Kept> records) => [.. records.OrderBy(record => record.Id).SelectMany(record => Lines($"{record.GetType().Name} {record.Id}", record))];

    private IEnumerable<string> Lines(string path, object record)
    {
        var type = db.Model.FindEntityType(record.GetType())!;
        foreach (var line in Columns(path, type, record)) yield return line;
        foreach (var navigation in type.GetNavigations())
        {
            var end = navigation.PropertyInfo!.GetValue(record);
            var many = end is System.Collections.IEnumerable rows ? [.. rows.Cast<object>().OrderBy(IdOf)] : end is null ? [] : new List<object> { end };
            yield return $"{path}.{navigation.Name}: {many.Count}";
            foreach (var (k, one) in many.Index())
            {
                foreach (var line in Lines($"{path}.{navigation.Name}[{k}]", one)) yield return line;
            }
        }
    }

    private IEnumerable<string> Columns(string path, ITypeBase type, object? record)
    {
        foreach (var property in type.GetProperties().Where(property => !property.IsShadowProperty()))
        {
            var value = record is null ? null : property.PropertyInfo!.GetValue(record);
            Meet($"{property.DeclaringType.ClrType.Name}.{property.Name}", value, property.ClrType);
            yield return string.Create(CultureInfo.InvariantCulture, $"{path}.{property.Name} = {value ?? "nothing"}");
        }

        foreach (var part in type.GetComplexProperties())
        {
            var value = record is null ? null : part.PropertyInfo!.GetValue(record);
            Meet($"{part.DeclaringType.ClrType.Name}.{part.Name}", value, part.ClrType);
            foreach (var line in Columns($"{path}.{part.Name}", part.ComplexType, value)) yield return line;
        }
    }

    private void Meet(string column, object? value, Type type)
    {
        Met.Add(column);
        if (value is not (null or "") && !(type.IsValueType && value.Equals(Activator.CreateInstance(type)))) Filled.Add(column);
    }

    private static long IdOf(object row) => (long)row.GetType().GetProperty("Id")!.GetValue(row)!;
}
