package beltwright.kit;

import beltwright.part.Part;

/// A seat and what fills it: so many pieces of one part, shipped in the box or already the rider's own.
public record Seat(SeatName name, Part part, int count, boolean fromRider) {}
