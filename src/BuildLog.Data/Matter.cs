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
        Matter.Component => Spoken("part"),
        Matter.OdometerChange => Spoken("odometer change"),
        Matter.IdentityNumber => Spoken("identity number"),
        Matter.WorkEntry => Spoken("work"),
        Matter.OutsideWork => Spoken("work given out"),
        Matter.DonorPiece => Spoken("piece of a donor"),
        Matter.WantedPart => Spoken("wanted part"),
        Matter.RoadTest => Spoken("road test"),
        Matter.Retorque => Spoken("re-torque"),
        Matter.Vehicle => Spoken("vehicle"),
        Matter.Fitment => Spoken("fitment"),
        Matter.Session => Spoken("session"),
        Matter.Goal => Spoken("goal"),
        Matter.Job => Spoken("job"),
        Matter.Cost => Spoken("cost"),
        Matter.Supplier => Spoken("supplier"),
        Matter.Donor => Spoken("donor"),
        Matter.Offer => Spoken("offer"),
        Matter.Plan => Spoken("plan"),
        Matter.Deadline => Spoken("deadline"),
        Matter.Decision => Spoken("decision"),
        Matter.Note => Spoken("note"),
        Matter.Attachment => Spoken("attachment"),
        Matter.Workshop => Spoken("shop"),
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
