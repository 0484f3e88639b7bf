/// Where a part gives: screws, threads, grips, fits, shafts, axles, bearings, plates, teeth.
///
/// May not live here: which screw sits where.
@NullMarked
package beltwright.strength;

import org.jspecify.annotations.NullMarked;
