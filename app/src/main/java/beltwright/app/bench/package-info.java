/// The bench: pages that show a dossier and take a draft along in their address.
///
/// Lives here: requests, the sheet as a page needs it, templates' data. May not: a formula, or a verdict of its own.
@NullMarked
package beltwright.app.bench;

import org.jspecify.annotations.NullMarked;
