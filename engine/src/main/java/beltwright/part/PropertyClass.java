package beltwright.part;

/// Strength classes of screws: proof, tensile and yield strength (MPa).
///
/// Source: ISO 898-1 values as printed in Shigley 9th ed., table 8-11 (10.9, 12.9); 8.8 below M16 and the stainless
/// class A2-70 (ISO 3506-1) from memory.
public enum PropertyClass {
    C8_8("8.8", 580, 800, 640),
    C10_9("10.9", 830, 1040, 940),
    C12_9("12.9", 970, 1220, 1100),
    A2_70("A2-70", 450, 700, 450),
    H45("45H", 0, 0, 0);

    private final String words;
    private final double proofMpa;
    private final double tensileMpa;
    private final double yieldMpa;

    PropertyClass(String words, double proofMpa, double tensileMpa, double yieldMpa) {
        this.words = words;
        this.proofMpa = proofMpa;
        this.tensileMpa = tensileMpa;
        this.yieldMpa = yieldMpa;
    }

    @Override
    public String toString() {
        return words;
    }

    public double proofMpa() {
        return proofMpa;
    }

    public double tensileMpa() {
        return tensileMpa;
    }

    public double yieldMpa() {
        return yieldMpa;
    }
}
