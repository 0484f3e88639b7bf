package beltwright.part;

/// A material as the checks need it. Values come from the workshop's reference file, each with its source.
///
/// @param shearMpa shear strength (MPa), NaN where unknown
/// @param hatch which section hatch the drawing uses
/// @param source where the strength was read
public record Material(String id, String name, double shearMpa, Hatch hatch, String source) {
    /// Section hatches by family of material (ISO 128-50 habits).
    public enum Hatch {
        STEEL,
        LIGHT_METAL,
        PLASTIC,
        RUBBER
    }
}
