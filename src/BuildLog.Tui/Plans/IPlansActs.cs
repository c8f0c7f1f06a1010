using BuildLog.Tui.Workbench;

namespace BuildLog.Tui.Plans;

/// <summary>What the keys of the plans page do. Each returns what happened, or null if nothing did.</summary>
internal interface IPlansActs
{
    PlansModel Read(long vehicleId);

    /// <summary>Asks for other numbers and puts them on the bench, stored nowhere: strip, findings and chart move.</summary>
    string? Try(IWorkbenchView view, long vehicleId);

    /// <summary>Puts a plan on the bench.</summary>
    string? TryPlan(long vehicleId, PlanRow row);

    /// <summary>Keeps what is tried as a plan.</summary>
    string? Keep(IWorkbenchView view, long vehicleId);

    /// <summary>Takes what is tried off the bench.</summary>
    string? Drop(IWorkbenchView view, long vehicleId);

    /// <summary>Carries a plan out: hunts the parts that are not the shop's, and fits those that are.</summary>
    string? CarryOut(IWorkbenchView view, long vehicleId, PlanRow row);

    /// <summary>Says what became of a plan: kept, or rejected for the rule that failed.</summary>
    string? Decide(IWorkbenchView view, long vehicleId, PlanRow row);

    /// <summary>Strikes a plan that nobody needs any more.</summary>
    string Strike(long vehicleId, PlanRow row);
}
