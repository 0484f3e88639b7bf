package beltwright.ride;

import beltwright.power.DriveLimits;
import beltwright.power.Governs;
import beltwright.power.PackModel;
import beltwright.power.Powertrain;
import java.util.ArrayList;
import java.util.List;

/// What is left of the brakes when something is not as it should be: level ground, dry, rider ready to brake, stiff
/// and upright. Beside it stands the stop of a rider who leans back.
///
/// - Source: `Steady`, with one thing changed at a time.
/// - Valid: where that is; a controller that has lost its radio link is taken to let go.
/// - Neglects: foot brake, which is not counted anywhere.
public final class WhatIsLeft {
    private WhatIsLeft() {}

    /// One row.
    ///
    /// @param slow slowing down (m/s²) at 10 km/h
    /// @param cruise the same at the cruise speed
    /// @param stop from the cruise speed to rest, rider upright
    /// @param leaningBack the same, rider leaning back
    /// @param governs what holds the brake back at the cruise speed
    /// @param note what else happens then
    public record Row(
            String what,
            double slow,
            double cruise,
            Steady.Stop stop,
            Steady.Stop leaningBack,
            Governs governs,
            String note) {}

    private static final double SLOW_MPS = 10 / 3.6;

    public static List<Row> rows(Board board) {
        var rows = new ArrayList<Row>();
        double charge = board.charge();
        rows.add(row("all as it should be", board, charge, ""));
        rows.add(row("pack full", board, 1, "do not start a descent on a full pack"));
        if (board.chargingAllowed()) {
            rows.add(row(
                    "cells too cold to be charged",
                    charging(board, 0),
                    charge,
                    "warm the pack before riding; braking must not charge it"));
        }
        if (board.train().motors() > 1) {
            rows.add(row(
                    "one belt broken",
                    motors(board, board.train().motors() - 1),
                    charge,
                    "the other side brakes alone and pulls the board aside"));
        } else {
            rows.add(row("the belt broken", unpowered(board), charge, "nothing brakes but the foot"));
        }
        rows.add(row(
                "protection board disconnects",
                unpowered(board),
                charge,
                board.belting().mayDisconnect()
                        ? "this pack's board may do so when braking charges it too hard"
                        : "not expected of this pack; nothing brakes but the foot"));
        rows.add(row(
                "radio link lost, controller lets go",
                unpowered(board),
                charge,
                "find out on the stand what this controller does"));
        return rows;
    }

    private static Row row(String what, Board board, double charge, String note) {
        var steady = new Steady(board.upright());
        return new Row(
                what,
                steady.decelerationMps2(SLOW_MPS, charge),
                steady.decelerationMps2(board.cruiseMps(), charge),
                steady.stop(board.cruiseMps(), charge),
                new Steady(board.leaningBack()).stop(board.cruiseMps(), charge),
                board.train().limits().brakeA() == 0
                        ? Governs.NONE
                        : steady.brake(board.cruiseMps(), charge, board.airC()).governs(),
                note);
    }

    private static Board charging(Board board, double chargeA) {
        var p = board.train().pack();
        return with(
                board,
                board.train().motors(),
                new PackModel(
                        p.cells(), p.curve(), p.ohm(), p.capacityAs(), p.dischargeA(), chargeA, p.fullV(), p.emptyV()),
                board.train().limits());
    }

    private static Board motors(Board board, int motors) {
        return with(board, motors, board.train().pack(), board.train().limits());
    }

    private static Board unpowered(Board board) {
        var l = board.train().limits();
        return with(
                board,
                board.train().motors(),
                board.train().pack(),
                new DriveLimits(
                        0,
                        0,
                        l.batteryA(),
                        l.chargeA(),
                        l.dutyShare(),
                        l.cutBackFromV(),
                        l.cutBackToV(),
                        l.windingFromC(),
                        l.windingToC(),
                        l.mostRadPerS()));
    }

    private static Board with(Board board, int motors, PackModel pack, DriveLimits limits) {
        var t = board.train();
        return board.with(
                new Powertrain(motors, t.ratio(), t.wheelRadiusM(), t.beltShare(), t.motor(), t.heat(), pack, limits));
    }
}
