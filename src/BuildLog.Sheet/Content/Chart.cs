namespace BuildLog.Sheet.Content;

/// <summary>What a sheet shows drawn rather than written. Whoever shows the sheet elsewhere than on paper draws it from the same numbers.</summary>
public abstract record Chart;
