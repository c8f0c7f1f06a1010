using System.Globalization;
using System.Reflection;
using Microsoft.EntityFrameworkCore.Metadata;

namespace BuildLog.Data.Tests.Rows;

/// <summary>All that the object mapper knows of a record, a line for each column, with what hangs on it.</summary>
/// <remarks>The mapper itself is asked what there is, so that a new column needs no word here.</remarks>
internal sealed class AsMapped(ShopContext db)
{
    /// <summary>The columns that held something that is not there by itself.</summary>
    public HashSet<string> Filled { get; } = [];

    /// <summary>All columns of what was come across.</summary>
    public HashSet<string> Met { get; } = [];

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
            var column = $"{property.DeclaringType.Name} {property.Name}";
            Met.Add(column);
            if (!IsThereByItself(value, property.PropertyInfo!)) Filled.Add(column);
            yield return string.Create(CultureInfo.InvariantCulture, $"{path}.{property.Name} = {value ?? "nothing"}");
        }

        foreach (var part in type.GetComplexProperties())
        {
            foreach (var line in Columns($"{path}.{part.Name}", part.ComplexType, record is null ? null : part.PropertyInfo!.GetValue(record))) yield return line;
        }
    }

    private static bool IsThereByItself(object? value, PropertyInfo property)
        => value is null or "" || (property.PropertyType.IsValueType && value.Equals(Activator.CreateInstance(property.PropertyType)));

    private static long IdOf(object row) => (long)row.GetType().GetProperty("Id")!.GetValue(row)!;
}
