/// Charts: what a search or a comparison found, drawn with the same lines and letters as the drawings.
///
/// Lives here: where on the sheet a number stands. May not: a number of its own.
@NullMarked
package beltwright.press.chart;

import org.jspecify.annotations.NullMarked;
