package beltwright.part;

import beltwright.quantity.Dimension;

/// A battery pack: its voltage full, working and empty, what it gives and takes, and its plug.
public record BatteryPack(
        Label label,
        @Field(value = "cells in series", min = 1, max = 30) int cellsInSeries,

        @Field(value = "working voltage of one cell", min = 2, max = 4.3, group = Field.Group.RIDE)
        Dimension cellVoltageV,

        @Field(value = "resistance of the whole pack", max = 2, group = Field.Group.RIDE)
        Dimension resistanceOhm,

        @Field(value = "voltage of a full cell", min = 2.5, max = 4.5)
        Dimension fullCellV,

        @Field(value = "voltage of an empty cell", min = 1.5, max = 3.6)
        Dimension emptyCellV,

        @Field(value = "current that the pack may give without end", min = 1, max = 500)
        Dimension dischargeCurrentA,

        @Field(value = "cells side by side", min = 1, max = 60, group = Field.Group.RIDE)
        Dimension cellsInParallel,

        @Field(value = "charge that the whole pack holds", min = 0.2, max = 500, group = Field.Group.RIDE)
        Dimension capacityAh,

        @Field(
                value = "which cell of the reference file gives the open-circuit curve",
                optional = true,
                group = Field.Group.RIDE)
        String cell,

        @Field(
                value = "cell temperature at which the resistance was measured",
                min = -20,
                max = 60,
                group = Field.Group.RIDE)
        Dimension resistanceAtC,

        @Field(
                value = "current that the pack takes without end when the brakes charge it",
                max = 500,
                group = Field.Group.RIDE)
        Dimension chargeCurrentA,

        @Field(value = "coldest cell that may be charged", min = -30, max = 20, group = Field.Group.RIDE)
        Dimension leastChargeC,

        @Field(
                value = "what the protection board does when braking charges the pack too hard",
                optional = true,
                group = Field.Group.RIDE)
        Protection protection,

        @Field(
                value = "current at which the protection board disconnects",
                min = 1,
                max = 1000,
                group = Field.Group.RIDE)
        Dimension disconnectsAboveA,

        @Field(value = "plug of the pack, diameter or width of a contact", min = 1, max = 15)
        Dimension plugMm)
        implements Part {
    /// What a protection board does when braking charges the pack too hard. Where it disconnects, the brake is gone.
    public enum Protection {
        UNKNOWN("not known"),
        NONE("no board on the charge path"),
        STAYS("stays connected"),
        DISCONNECTS("may disconnect");

        private final String words;

        Protection(String words) {
            this.words = words;
        }

        @Override
        public String toString() {
            return words;
        }
    }
}
