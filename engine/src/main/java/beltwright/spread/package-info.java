/// How sure a finding is: every toleranced number drawn from its distribution, kit after kit, and what came of it.
///
/// Lives here: distributions, draws, kits made of drawn pieces, odds, percentiles, what matters most. May not: threads;
/// whoever calls lends its own.
@NullMarked
package beltwright.spread;

import org.jspecify.annotations.NullMarked;
