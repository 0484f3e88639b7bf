/// What goes with what: parts and kits held against other parts, the belts that fall in a slot, and the smallest change
/// that mends a finding.
///
/// Lives here: combinations, and what the checks say of them. May not: a formula of a check, a file, a thread.
@NullMarked
package beltwright.pairs;

import org.jspecify.annotations.NullMarked;
