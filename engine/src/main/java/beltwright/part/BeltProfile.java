package beltwright.part;

/// Toothed-belt profiles: pitch, and how far the pitch line lies outside the pulley's outside diameter.
///
/// - Source: ISO 13050 tables 8, 9 and 18 (H and R types) and ISO 17396 (T, AT), transcribed from a public copy; the
///   5M values also agree with a belt maker's published table of pitch and outside diameters.
/// - The S type is left out: its published pitch line differentials contradict each other.
public enum BeltProfile {
    H3M("3M H", "3M, ISO 13050 type H", 3, 0.381, 2.4, 1.21),
    H5M("5M H", "5M, ISO 13050 type H", 5, 0.5715, 3.8, 2.08),
    R5M("5M R", "5M, ISO 13050 type R", 5, 0.570, 3.8, 2.15),
    H8M("8M H", "8M, ISO 13050 type H", 8, 0.686, 6.0, 3.38),
    T5("T5", "T5, ISO 17396", 5, 0.50, 2.2, 1.20),
    AT5("AT5", "AT5, ISO 17396", 5, 0.60, 2.7, 1.20);

    private final String words;
    private final String standard;
    private final double pitchMm;
    private final double pitchLineDifferentialMm;
    private final double heightMm;
    private final double toothHeightMm;

    BeltProfile(
            String words,
            String standard,
            double pitchMm,
            double pitchLineDifferentialMm,
            double heightMm,
            double toothHeightMm) {
        this.words = words;
        this.standard = standard;
        this.pitchMm = pitchMm;
        this.pitchLineDifferentialMm = pitchLineDifferentialMm;
        this.heightMm = heightMm;
        this.toothHeightMm = toothHeightMm;
    }

    @Override
    public String toString() {
        return words;
    }

    public String standard() {
        return standard;
    }

    public double pitchMm() {
        return pitchMm;
    }

    /// {@return the radial distance from the pulley's outside diameter to the pitch line (mm)}
    public double pitchLineDifferentialMm() {
        return pitchLineDifferentialMm;
    }

    /// {@return the belt's whole height, back to tooth tip (mm)}
    public double heightMm() {
        return heightMm;
    }

    public double toothHeightMm() {
        return toothHeightMm;
    }

    /// {@return how far a flange must reach past the outside diameter (mm): tooth height and pitch
    /// line differential together}
    ///
    /// - Source: ISO 13050:2014 annex D, public transcription (the standard itself was not read).
    public double flangeReachMm() {
        return toothHeightMm + pitchLineDifferentialMm;
    }

    /// Mass of a rubber belt of this width (g/m), where its maker gives none.
    ///
    /// - Source: a belt maker's technical manual, table 37, which prints it for 10 mm.
    /// - Valid: type H of 3, 5 and 8 mm pitch; NaN for the others.
    public double usualMassGPerM(double widthMm) {
        return widthMm
                * switch (this) {
                    case H3M -> 2.4;
                    case H5M -> 3.5;
                    case H8M -> 5.8;
                    case R5M, T5, AT5 -> Double.NaN;
                };
    }
}
