/// Screws, threads, bearings and shafts: preload, torque, thread strip, life, stress.
///
/// May not live here: which screw sits where.
@NullMarked
package beltwright.strength;

import org.jspecify.annotations.NullMarked;
