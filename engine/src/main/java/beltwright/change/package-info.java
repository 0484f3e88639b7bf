/// What differs between two dossiers, in trade words.
///
/// May not live here: deciding whether the change is good.
@NullMarked
package beltwright.change;

import org.jspecify.annotations.NullMarked;
