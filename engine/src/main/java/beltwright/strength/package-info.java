/// Screws and threads: preload, torque, thread strip.
///
/// May not live here: which screw sits where.
@NullMarked
package beltwright.strength;

import org.jspecify.annotations.NullMarked;
