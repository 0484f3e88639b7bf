/// A board on the road: the route, the rider, one ride in time with its events, what the board can do at steady speed,
/// and what a measured ride says of its coefficients.
///
/// May not live here: anything that reads or writes a file.
@NullMarked
package beltwright.ride;

import org.jspecify.annotations.NullMarked;
