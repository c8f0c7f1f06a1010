using BuildLog.Data.Attachments;
using BuildLog.Data.Components;
using BuildLog.Data.Costs;
using BuildLog.Data.Deadlines;
using BuildLog.Data.Decisions;
using BuildLog.Data.Donors;
using BuildLog.Data.Fitments;
using BuildLog.Data.Goals;
using BuildLog.Data.Hunting;
using BuildLog.Data.Identity;
using BuildLog.Data.Jobs;
using BuildLog.Data.Notes;
using BuildLog.Data.Plans;
using BuildLog.Data.RoadTests;
using BuildLog.Data.Sessions;
using BuildLog.Data.Suppliers;
using BuildLog.Data.Vehicles;
using BuildLog.Data.Workshops;

namespace BuildLog.Data;

/// <summary>What a kept thing is, whichever of its kinds: what notes and attachments are about.</summary>
public enum Matter
{
    Vehicle,
    Component,
    Fitment,
    OdometerChange,
    Session,
    Goal,
    IdentityNumber,
    Job,
    WorkEntry,
    OutsideWork,
    Cost,
    Supplier,
    Donor,
    DonorPiece,
    WantedPart,
    Offer,
    Plan,
    RoadTest,
    Retorque,
    Deadline,
    Decision,
    Note,
    Attachment,
    Workshop,
}

public static class Matters
{
    public static Matter Of(Kept kept) => Of(kept.GetType());

    public static string InWords(this Matter matter) => matter switch
    {
        Matter.Component => "part",
        Matter.OdometerChange => "odometer change",
        Matter.IdentityNumber => "identity number",
        Matter.WorkEntry => "work",
        Matter.OutsideWork => "work given out",
        Matter.DonorPiece => "piece of a donor",
        Matter.WantedPart => "wanted part",
        Matter.RoadTest => "road test",
        Matter.Retorque => "re-torque",
        Matter.Vehicle => "vehicle",
        Matter.Fitment => "fitment",
        Matter.Session => "session",
        Matter.Goal => "goal",
        Matter.Job => "job",
        Matter.Cost => "cost",
        Matter.Supplier => "supplier",
        Matter.Donor => "donor",
        Matter.Offer => "offer",
        Matter.Plan => "plan",
        Matter.Deadline => "deadline",
        Matter.Decision => "decision",
        Matter.Note => "note",
        Matter.Attachment => "attachment",
        Matter.Workshop => "shop",
        _ => throw new ArgumentOutOfRangeException(nameof(matter), matter, "No such matter."),
    };

    /// <summary>The class that all things of this matter have in common.</summary>
    internal static Type TypeOf(Matter matter) => Types[matter];

    internal static Matter Of(Type type) => Types.First(known => known.Value.IsAssignableFrom(type)).Key;

    private static readonly Dictionary<Matter, Type> Types = new()
    {
        [Matter.Vehicle] = typeof(Vehicle),
        [Matter.Component] = typeof(Component),
        [Matter.Fitment] = typeof(Fitment),
        [Matter.OdometerChange] = typeof(OdometerChange),
        [Matter.Session] = typeof(Session),
        [Matter.Goal] = typeof(GoalEntry),
        [Matter.IdentityNumber] = typeof(IdentityNumber),
        [Matter.Job] = typeof(Job),
        [Matter.WorkEntry] = typeof(WorkEntry),
        [Matter.OutsideWork] = typeof(OutsideWork),
        [Matter.Cost] = typeof(Cost),
        [Matter.Supplier] = typeof(Supplier),
        [Matter.Donor] = typeof(Donor),
        [Matter.DonorPiece] = typeof(DonorPiece),
        [Matter.WantedPart] = typeof(WantedPart),
        [Matter.Offer] = typeof(Offer),
        [Matter.Plan] = typeof(Plan),
        [Matter.RoadTest] = typeof(RoadTest),
        [Matter.Retorque] = typeof(Retorque),
        [Matter.Deadline] = typeof(Deadline),
        [Matter.Decision] = typeof(Decision),
        [Matter.Note] = typeof(Note),
        [Matter.Attachment] = typeof(Attachment),
        [Matter.Workshop] = typeof(Workshop),
    };
}
