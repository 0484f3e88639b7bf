/// A [beltwright.press.drawing.Drawing] written as SVG.
///
/// May not live here: deciding what is drawn or where it stands.
@NullMarked
package beltwright.press.svg;

import org.jspecify.annotations.NullMarked;
