using BuildLog.Data.Days;
using BuildLog.Data.Fitments;
using Microsoft.EntityFrameworkCore.Metadata;

namespace BuildLog.Data.Search;

/// <summary>Everything that was typed into a record: its own texts, the texts of its numbers, and those of its rows.</summary>
/// <remarks>Read from the model, so that a new kind of record is found without another line.</remarks>
internal static class TypedInto
{
    public static string Text(IEntityType type, Kept record)
        => string.Join('\n', Texts(type, record, isRow: false).Concat(Rows(type, record)).OfType<string>().Where(text => text.Length > 0).Distinct());

    /// <summary>The day it speaks of, where it has one.</summary>
    public static DateOnly? Day(Kept record)
        => ((string[])["Date", "From"]).Select(name => record.GetType().GetProperty(name)?.GetValue(record) as DateOnly?).FirstOrDefault(day => day is not null);

    /// <summary>The same as it was typed, where it is not known to the day.</summary>
    public static string? DayAsTyped(Kept record) => (record switch
    {
        Dated dated => dated.DateAsTyped,
        Fitment fitment => fitment.FromAsTyped,
        _ => null,
    })?.Text;

    // What is not public, such as a name as it is compared, nobody typed; rows are not public as a whole.
    private static IEnumerable<string?> Texts(ITypeBase type, object thing, bool isRow)
    {
        foreach (var property in type.GetProperties())
        {
            if (property.ClrType == typeof(string) && property.PropertyInfo is { } text && (isRow || text.GetMethod is { IsPublic: true }))
                yield return text.GetValue(thing) as string;
        }

        foreach (var number in type.GetComplexProperties())
        {
            if (number.PropertyInfo?.GetValue(thing) is { } noted && noted.GetType().GetProperty("Text") is { } text)
                yield return text.GetValue(noted) as string;
        }
    }

    private static IEnumerable<string?> Rows(IEntityType type, Kept record)
        => type.GetNavigations()
            .Where(navigation => navigation.IsCollection && !navigation.TargetEntityType.IsKept())
            .SelectMany(navigation => navigation.PropertyInfo?.GetValue(record) is System.Collections.IEnumerable rows
                ? rows.Cast<object>().SelectMany(row => Texts(navigation.TargetEntityType, row, isRow: true))
                : []);
}
