package beltwright.press.table;

import beltwright.kit.Kit;
import beltwright.ride.Board;
import beltwright.ride.Ride;

/// One kit on its way.
public record Ridden(Kit kit, Board board, Ride ride) {}
