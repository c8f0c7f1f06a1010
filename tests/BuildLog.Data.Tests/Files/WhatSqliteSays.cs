using BuildLog.Data.Files;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Xunit;

namespace BuildLog.Data.Tests.Files;

/// <summary>Codes: sqlite.org, result and extended result codes.</summary>
public sealed class WhatSqliteSays
{
    [Theory]
    [InlineData(5, 5, Fault.Busy, "Another program is writing to shop.db. Nothing was changed; wait a moment or close it, and try again.")]
    [InlineData(6, 262, Fault.Busy, "Another program is writing to shop.db. Nothing was changed; wait a moment or close it, and try again.")]
    [InlineData(8, 1544, Fault.NotWritable, "shop.db or its folder cannot be written. Give yourself the right to write there, or name another file with --database.")]
    [InlineData(10, 5386, Fault.ReadFailed, "Reading or writing shop.db failed (SQLite 5386). If it lies on a network folder or a stick, copy it to this computer's own disk.")]
    [InlineData(11, 11, Fault.Damaged, "shop.db is damaged. Keep it as it is, and restore the newest copy from its backups folder: buildlog restore FILE.")]
    [InlineData(13, 13, Fault.DiskFull, "The disk that holds shop.db is full. Nothing of the last change was stored; free some space and try again.")]
    [InlineData(10, 4874, Fault.DiskFull, "The disk that holds shop.db is full. Nothing of the last change was stored; free some space and try again.")]
    [InlineData(14, 14, Fault.CannotOpen, "shop.db cannot be opened: its folder is missing, or you may not read it or create files there. Name another file with --database.")]
    [InlineData(26, 26, Fault.NotADatabase, "shop.db is not a BuildLog record (or it is encrypted). It was not touched; name another file with --database.")]
    [InlineData(1, 1, Fault.Other, "shop.db cannot be used (SQLite 1: what it said). Close other programs that use it and try again.")]
    public void Becomes_a_sentence_with_a_way_out(int code, int extended, Fault fault, string sentence)
        => Assert.Equal((fault, sentence), FileTroubles.InWords(code, extended, "what it said", "shop.db"));

    [Fact]
    public void Means_damage_where_a_number_stands_for_a_text()
    {
        using var test = new TestShop();
        using var connection = PlainConnection.Open(test.Path);
        Assert.Equal(Fault.Damaged, Assert.Throws<RecordException>(() => FileTroubles.Guard(test.Path, () => connection.Column("SELECT 5"))).Fault);
    }

    [Theory]
    [InlineData("SQLite Error 1: 'no such table: Vehicles'.")]
    [InlineData("SQLite Error 1: 'no such column: v.Name'.")]
    [InlineData("SQLite Error 1: 'table \"Vehicles\" already exists'.")]
    public void Means_damage_where_the_tables_are_not_as_they_should_be(string message)
        => Assert.Equal(Fault.Damaged, FileTroubles.InWords(1, 1, message, "shop.db").Fault);

    [Theory]
    [InlineData(787, "SQLite Error 19: 'FOREIGN KEY constraint failed'.", "Nothing was changed: something else in the record still refers to this, or what it refers to is gone.")]
    [InlineData(1811, "SQLite Error 19: 'FOREIGN KEY constraint failed'.", "Nothing was changed: something else in the record still refers to this, or what it refers to is gone.")]
    [InlineData(1811, "SQLite Error 19: 'Our own words.'.", "Our own words.")]
    [InlineData(2067, "SQLite Error 19: 'UNIQUE constraint failed: Vehicles.NameKey'.", "Nothing was changed: the record already holds one like it, entered meanwhile. Look again and try once more.")]
    [InlineData(275, "SQLite Error 19: 'CHECK constraint failed: CK_Vehicles_Name'.", "Nothing was changed: the record does not allow this value (CK_Vehicles_Name).")]
    public void Says_which_rule_of_the_tables_stood_in_the_way(int extended, string message, string sentence)
        => Assert.Equal((Fault.Refused, sentence), FileTroubles.InWords(19, extended, message, "shop.db"));

    [Fact]
    public void Is_found_inside_what_the_mapper_wraps_around_it()
    {
        var wrapped = new DbUpdateException("outer", new SqliteException("disk full", 13, 13));
        var explained = FileTroubles.Explain(wrapped, "shop.db");
        Assert.Equal(Fault.DiskFull, explained!.Fault);
        Assert.Same(wrapped, explained.InnerException);
    }

    [Fact]
    public void Does_not_cover_up_a_mistake_in_the_program()
        => Assert.Null(FileTroubles.Explain(new InvalidOperationException("a mistake"), "shop.db"));
}
