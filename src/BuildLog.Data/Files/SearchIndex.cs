namespace BuildLog.Data.Files;

/// <summary>The full-text index over what can be found: SQLite's own, beside the table it reads its texts from.</summary>
/// <remarks>Accents are alike, <c>Ärmel</c> and <c>armel</c>; beginnings of one to three letters have an index of their own, for they are typed first; for longer ones see <see cref="Search.BegunWord"/>.</remarks>
internal static class SearchIndex
{
    public const string Script =
        """
        DROP TABLE IF EXISTS "FindableText";
        CREATE VIRTUAL TABLE "FindableText" USING fts5("Title", "About", "Body", content='Findables', content_rowid='Id', tokenize='unicode61 remove_diacritics 2', prefix='1 2 3');
        DROP TABLE IF EXISTS "FindableTerms";
        CREATE VIRTUAL TABLE "FindableTerms" USING fts5vocab('FindableText', 'instance');
        DROP TRIGGER IF EXISTS "Findables_Insert_Text";
        CREATE TRIGGER "Findables_Insert_Text" AFTER INSERT ON "Findables"
        BEGIN
            INSERT INTO "FindableText" (rowid, "Title", "About", "Body") VALUES (NEW."Id", NEW."Title", NEW."About", NEW."Body");
        END;
        DROP TRIGGER IF EXISTS "Findables_Delete_Text";
        CREATE TRIGGER "Findables_Delete_Text" AFTER DELETE ON "Findables"
        BEGIN
            INSERT INTO "FindableText" ("FindableText", rowid, "Title", "About", "Body") VALUES ('delete', OLD."Id", OLD."Title", OLD."About", OLD."Body");
        END;
        DROP TRIGGER IF EXISTS "Findables_Update_Text";
        CREATE TRIGGER "Findables_Update_Text" AFTER UPDATE OF "Title", "About", "Body" ON "Findables"
        BEGIN
            INSERT INTO "FindableText" ("FindableText", rowid, "Title", "About", "Body") VALUES ('delete', OLD."Id", OLD."Title", OLD."About", OLD."Body");
            INSERT INTO "FindableText" (rowid, "Title", "About", "Body") VALUES (NEW."Id", NEW."Title", NEW."About", NEW."Body");
        END;
        INSERT INTO "FindableText" ("FindableText") VALUES ('rebuild');
        """;
}
