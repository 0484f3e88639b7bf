/// The kinds of part, one record each, and the standards' tables that describe their mating faces.
///
/// Lives here: what a part measures. May not: where it sits in a kit, whether it fits, any formula of a check.
@NullMarked
package beltwright.part;

import org.jspecify.annotations.NullMarked;
