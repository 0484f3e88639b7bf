package beltwright.check;

/// How often a check is asked: once for each drive, for each end of the axle, or for the whole kit.
public enum Scope {
    DRIVE,
    END,
    KIT
}
