package beltwright.part;

/// Screw heads by ISO standard: how wide and high the head is and which hex key turns it.
///
/// Source: ISO 4762 (cap), ISO 7380-1 (button), ISO 10642 (countersunk), ISO 4026/4029 (set screw), transcribed from
/// memory; the trials hold cap heads against a general-purpose parts library.
public enum ScrewHead {
    CAP("cap", "ISO 4762", new double[] {2.5, 3, 4, 5, 6, 8, 10}, new double[] {5.5, 7, 8.5, 10, 13, 16, 18}, 1.0),
    BUTTON(
            "button",
            "ISO 7380-1",
            new double[] {2, 2.5, 3, 4, 5, 6, 8},
            new double[] {5.7, 7.6, 9.5, 10.5, 14, 17.5, 21},
            0.55),
    COUNTERSUNK(
            "countersunk",
            "ISO 10642",
            new double[] {2, 2.5, 3, 4, 5, 6, 8},
            new double[] {6, 8, 10, 12, 16, 20, 24},
            0),
    SET("set", "ISO 4026", new double[] {1.5, 2, 2.5, 3, 4, 5, 6}, new double[] {3, 4, 5, 6, 8, 10, 12}, 0);

    private final String words;
    private final String standard;
    private final double[] keyMm;
    private final double[] diameterMm;
    private final double heightPerMajor;

    ScrewHead(String words, String standard, double[] keyMm, double[] diameterMm, double heightPerMajor) {
        this.words = words;
        this.standard = standard;
        this.keyMm = keyMm;
        this.diameterMm = diameterMm;
        this.heightPerMajor = heightPerMajor;
    }

    @Override
    public String toString() {
        return words;
    }

    public String standard() {
        return standard;
    }

    /// {@return hex key size (mm)}
    public double keyMm(Thread thread) {
        return keyMm[thread.ordinal()];
    }

    /// {@return head diameter, nominal (mm)}
    public double diameterMm(Thread thread) {
        return diameterMm[thread.ordinal()];
    }

    /// {@return how far the head stands above the part it clamps (mm)}
    public double heightMm(Thread thread) {
        return heightPerMajor * thread.majorMm();
    }
}
