namespace GroveSpec.Drawing.Plan;

/// <summary>How much texture a plan carries; the more trunks, the less.</summary>
internal enum PlanDetail
{
    /// <summary>Up to 120 trunks: bark, growth rings, flare, crowns, gaps.</summary>
    Full,

    /// <summary>Up to 1,000 trunks: bark and one growth ring, crowns where stated.</summary>
    Less,

    /// <summary>Beyond: one outline a trunk.</summary>
    Least,
}
