/// Everything known of one kit, computed once and immutable.
///
/// May not live here: drawing or printing it.
@NullMarked
package beltwright.dossier;

import org.jspecify.annotations.NullMarked;
