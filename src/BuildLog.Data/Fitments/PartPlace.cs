using BuildLog.Data.Components;

namespace BuildLog.Data.Fitments;

/// <summary>A part and where it is: on a vehicle, or on the shelf where there is no fitment.</summary>
public sealed record PartPlace(Component Component, Fitment? Fitment);
