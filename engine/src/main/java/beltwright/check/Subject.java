package beltwright.check;

import beltwright.kit.Drive;
import beltwright.kit.Kit;
import beltwright.kit.Role;
import beltwright.kit.Side;
import beltwright.kit.WheelEnd;
import beltwright.layout.DriveLayout;
import beltwright.layout.EndLayout;
import beltwright.layout.Layout;
import beltwright.layout.MainDimensions;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/// What one question is asked of: a drive, an end of the axle, or the kit, with where it sits.
public final class Subject {
    private final Kit kit;
    private final Layout layout;
    private final Scope scope;
    private final @Nullable Side side;
    private final @Nullable Drive drive;
    private final @Nullable DriveLayout at;
    private final @Nullable WheelEnd end;
    private final @Nullable EndLayout endAt;
    private final long filled;
    private final double restN;

    private Subject(
            Kit kit,
            Layout layout,
            Scope scope,
            @Nullable Drive drive,
            @Nullable DriveLayout at,
            @Nullable WheelEnd end,
            @Nullable EndLayout endAt,
            long filled,
            double restN) {
        this.filled = filled;
        this.restN = restN;
        this.kit = kit;
        this.layout = layout;
        this.scope = scope;
        this.drive = drive;
        this.at = at;
        this.end = end;
        this.endAt = endAt;
        this.side = end == null ? null : end.side();
    }

    /// {@return every subject of a kit: its drives, its ends, itself}
    public static List<Subject> of(Kit kit, Layout layout) {
        var all = new ArrayList<Subject>(5);
        long ofKit = 0;
        long left = 0;
        long right = 0;
        for (var seat : kit.seats().keySet()) {
            long bit = 1L << seat.role().ordinal();
            if (seat.side() == null) {
                ofKit |= bit;
            } else if (seat.side() == Side.LEFT) {
                left |= bit;
            } else {
                right |= bit;
            }
        }
        for (int i = 0; i < kit.drives().size(); i++) {
            var drive = kit.drives().get(i);
            all.add(new Subject(
                    kit,
                    layout,
                    Scope.DRIVE,
                    drive,
                    layout.drives().get(i),
                    drive.end(),
                    layout.end(drive.side()),
                    ofKit | (drive.side() == Side.LEFT ? left : right),
                    Double.NaN));
        }
        for (int i = 0; i < kit.ends().size(); i++) {
            all.add(new Subject(
                    kit,
                    layout,
                    Scope.END,
                    null,
                    null,
                    kit.ends().get(i),
                    layout.ends().get(i),
                    ofKit | (kit.ends().get(i).side() == Side.LEFT ? left : right),
                    Double.NaN));
        }
        all.add(new Subject(kit, layout, Scope.KIT, null, null, null, null, ofKit | left | right, Double.NaN));
        return all;
    }

    /// {@return the same with its belt at this tension at rest (N), whatever the kit says}
    Subject tensioned(double restN) {
        return new Subject(kit, layout, scope, drive, at, end, endAt, filled, restN);
    }

    /// {@return tension at rest (N) that the belt is tried at; NaN where it is as the kit says}
    double restN() {
        return restN;
    }

    /// {@return whether a part sits in every one of these seats, given as bits by [Role#ordinal]}
    boolean filled(long roles) {
        return (filled & roles) == roles;
    }

    /// {@return whether a part sits in this seat}
    public boolean filled(Role role) {
        return filled(1L << role.ordinal());
    }

    public Kit kit() {
        return kit;
    }

    public Layout layout() {
        return layout;
    }

    public Scope scope() {
        return scope;
    }

    public Drive drive() {
        return Objects.requireNonNull(drive);
    }

    public DriveLayout at() {
        return Objects.requireNonNull(at);
    }

    public WheelEnd end() {
        return Objects.requireNonNull(end);
    }

    public EndLayout endAt() {
        return Objects.requireNonNull(endAt);
    }

    public Side side() {
        return Objects.requireNonNull(side);
    }

    /// {@return y in the plan view (mm, left positive) of a station outward from this side's end face}
    double plan(double stationMm) {
        return MainDimensions.plan(kit, side(), stationMm);
    }

    /// {@return "left", "right" or "kit", the last part of a finding's key}
    public String word() {
        return side == null ? "kit" : side.toString();
    }
}
