package beltwright.part;

import beltwright.quantity.Dimension;

/// A battery pack: its voltage full, working and empty, what it gives, and its plug.
public record BatteryPack(
        Label label,
        @Field(value = "cells in series", min = 1, max = 30) int cellsInSeries,

        @Field(value = "working voltage of one cell", min = 2, max = 4.3)
        Dimension cellVoltageV,

        @Field(value = "resistance of the whole pack", max = 2)
        Dimension resistanceOhm,

        @Field(value = "voltage of a full cell", min = 2.5, max = 4.5)
        Dimension fullCellV,

        @Field(value = "voltage of an empty cell", min = 1.5, max = 3.6)
        Dimension emptyCellV,

        @Field(value = "current that the pack may give without end", min = 1, max = 500)
        Dimension dischargeCurrentA,

        @Field(value = "plug of the pack, diameter or width of a contact", min = 1, max = 15)
        Dimension plugMm)
        implements Part {}
