package beltwright.part;

import beltwright.quantity.Dimension;

/// A battery pack, as far as the first numbers need it.
public record BatteryPack(
        Label label,
        @Field(value = "cells in series", min = 1, max = 30) int cellsInSeries,

        @Field(value = "working voltage of one cell", min = 2, max = 4.3)
        Dimension cellVoltageV,

        @Field(value = "resistance of the whole pack", max = 2)
        Dimension resistanceOhm)
        implements Part {}
