/// The drawing office: a dossier becomes a [Drawing], a model of lines, arcs, hatches and dimensions in mm.
///
/// May not live here: a formula of the trade, or anything that only one file format knows.
@NullMarked
package beltwright.press.drawing;

import org.jspecify.annotations.NullMarked;
