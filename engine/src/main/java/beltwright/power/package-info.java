/// Motor, pack, controller and road in closed form: pulls, currents, warmth, stops, speeds.
///
/// May not live here: a ride over time.
@NullMarked
package beltwright.power;

import org.jspecify.annotations.NullMarked;
