using BuildLog.Data.Attachments;
using BuildLog.Data.Changes;
using BuildLog.Data.Components;
using BuildLog.Data.Costs;
using BuildLog.Data.Deadlines;
using BuildLog.Data.Decisions;
using BuildLog.Data.Donors;
using BuildLog.Data.Files;
using BuildLog.Data.Fitments;
using BuildLog.Data.Goals;
using BuildLog.Data.Hunting;
using BuildLog.Data.Identity;
using BuildLog.Data.Jobs;
using BuildLog.Data.Notes;
using BuildLog.Data.Plans;
using BuildLog.Data.RoadTests;
using BuildLog.Data.Rows;
using BuildLog.Data.Search;
using BuildLog.Data.Sessions;
using BuildLog.Data.Specs;
using BuildLog.Data.Suppliers;
using BuildLog.Data.Vehicles;
using BuildLog.Data.Workshops;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Migrations;

namespace BuildLog.Data;

/// <summary>The record's tables.</summary>
internal sealed class ShopContext(DbContextOptions<ShopContext> options) : DbContext(options)
{
    private StoredRows? rows;
    private RowReader? reader;

    public DbSet<Vehicle> Vehicles => Set<Vehicle>();

    public DbSet<Component> Components => Set<Component>();

    public DbSet<Fitment> Fitments => Set<Fitment>();

    public DbSet<Session> Sessions => Set<Session>();

    public DbSet<GoalEntry> Goals => Set<GoalEntry>();

    public DbSet<ChangeSet> Changes => Set<ChangeSet>();

    /// <summary>Where a change is noted down.</summary>
    public Journal Journal { get => field ??= new(this); private set; }

    /// <summary>Single rows, read and written by hand.</summary>
    public StoredRows Rows => rows ??= new(this);

    /// <summary>What is read by hand, within the change.</summary>
    public Snapshot Record { get => field ??= ReadByHand(); private set; }

    public static DbContextOptions<ShopContext> OptionsFor(string path)
        => new DbContextOptionsBuilder<ShopContext>()
            .UseSqlite(ShopConnection.StringFor(path), sqlite => sqlite.UseQuerySplittingBehavior(QuerySplittingBehavior.SplitQuery))
            .ReplaceService<IMigrationsSqlGenerator, StrictTables>()
            .AddInterceptors(FineWaiting.Instance)
            .Options;

    /// <summary>Forgets the change before: what was prepared for it is kept for the next one.</summary>
    public void StartAnew()
    {
        ChangeTracker.Clear();
        (Journal, Record) = (null!, null!);
    }

    /// <summary>Forgets what was loaded, in the middle of a change that is stored as it goes.</summary>
    public void LetGo()
    {
        ChangeTracker.Clear();
        Record = null!;
    }

    public override void Dispose()
    {
        rows?.Dispose();
        reader?.Dispose();
        base.Dispose();
    }

    public override int SaveChanges(bool acceptAllChangesOnSuccess)
    {
        // A number that was taken out belongs to nothing any more; it may belong to either of two, so it is not taken for an orphan by itself.
        ChangeTracker.DetectChanges();
        foreach (var row in ChangeTracker.Entries<SpecRow>().Where(row => row is { State: EntityState.Modified, Entity: { ComponentId: null, VehicleId: null } }).ToList())
            row.State = EntityState.Deleted;

        // A change of rows below counts as a change of what they belong to, which the caller has marked.
        foreach (var entry in ChangeTracker.Entries<Kept>().Where(entry => entry.State == EntityState.Modified)) entry.Entity.Version++;
        Journal.Look();
        var saved = base.SaveChanges(acceptAllChangesOnSuccess);
        Journal.Note();
        return saved;
    }

    protected override void OnModelCreating(ModelBuilder modelBuilder)
    {
        VehicleMapping.Map(modelBuilder);
        ComponentMapping.Map(modelBuilder);
        SpecMapping.Map(modelBuilder);
        TraitMapping.Map(modelBuilder);
        FitmentMapping.Map(modelBuilder);
        SessionMapping.Map(modelBuilder);
        GoalMapping.Map(modelBuilder);
        IdentityMapping.Map(modelBuilder);
        SupplierMapping.Map(modelBuilder);
        DonorMapping.Map(modelBuilder);
        JobMapping.Map(modelBuilder);
        CostMapping.Map(modelBuilder);
        HuntingMapping.Map(modelBuilder);
        PlanMapping.Map(modelBuilder);
        RoadTestMapping.Map(modelBuilder);
        DeadlineMapping.Map(modelBuilder);
        DecisionMapping.Map(modelBuilder);
        NoteMapping.Map(modelBuilder);
        AttachmentMapping.Map(modelBuilder);
        WorkshopMapping.Map(modelBuilder);
        ChangeMapping.Map(modelBuilder);
        FindableMapping.Map(modelBuilder);
    }

    private Snapshot ReadByHand()
    {
        reader ??= new((SqliteConnection)Database.GetDbConnection());
        return new(reader);
    }
}
