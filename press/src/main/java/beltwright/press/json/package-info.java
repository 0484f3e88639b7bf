/// A dossier as JSON for scripts; `docs/json.md` describes every field.
///
/// May not live here: a number that the dossier does not hold.
@NullMarked
package beltwright.press.json;

import org.jspecify.annotations.NullMarked;
