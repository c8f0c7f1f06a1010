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

    public static Later InWords(this Matter matter) => matter switch
    {
        Matter.Component => new Later("part"),
        Matter.OdometerChange => new Later("odometer change"),
        Matter.IdentityNumber => new Later("identity number"),
        Matter.WorkEntry => new Later("work"),
        Matter.OutsideWork => new Later("work given out"),
        Matter.DonorPiece => new Later("piece of a donor"),
        Matter.WantedPart => new Later("wanted part"),
        Matter.RoadTest => new Later("road test"),
        Matter.Retorque => new Later("re-torque"),
        Matter.Vehicle => new Later("vehicle"),
        Matter.Fitment => new Later("fitment"),
        Matter.Session => new Later("session"),
        Matter.Goal => new Later("goal"),
        Matter.Job => new Later("job"),
        Matter.Cost => new Later("cost"),
        Matter.Supplier => new Later("supplier"),
        Matter.Donor => new Later("donor"),
        Matter.Offer => new Later("offer"),
        Matter.Plan => new Later("plan"),
        Matter.Deadline => new Later("deadline"),
        Matter.Decision => new Later("decision"),
        Matter.Note => new Later("note"),
        Matter.Attachment => new Later("attachment"),
        Matter.Workshop => new Later("shop"),
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
