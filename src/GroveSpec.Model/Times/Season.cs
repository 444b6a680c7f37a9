namespace GroveSpec.Model.Times;

/// <summary>A season of the year; which months it has depends on the hemisphere of the site.</summary>
public enum Season
{
    /// <summary>March to May in the north.</summary>
    Spring,

    /// <summary>June to August in the north.</summary>
    Summer,

    /// <summary>September to November in the north.</summary>
    Autumn,

    /// <summary>December to February in the north; it is named for the year in which it ends.</summary>
    Winter,
}
