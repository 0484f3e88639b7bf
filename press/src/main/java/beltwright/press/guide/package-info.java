/// What is printed and put in the box: the assembly guide and the packing list, as pages of one file.
///
/// Lives here: the order of the page and its words. May not: a count, a torque or a step of its own.
@NullMarked
package beltwright.press.guide;

import org.jspecify.annotations.NullMarked;
