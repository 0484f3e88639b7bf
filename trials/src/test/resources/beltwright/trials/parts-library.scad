// What the parts library MCAD says of the sizes asked for: echoed from its tables, and drawn as bolts 100 mm apart.
// Its tables of nuts and heads miss a comma after M20: ask for nothing above M16.
use <MCAD/bearing.scad>
include <MCAD/nuts_and_bolts.scad>

bearings = [];
threads = [];

for (b = bearings)
    echo("bearing", b, bearingInnerDiameter(b), bearingOuterDiameter(b), bearingWidth(b));
for (d = threads) {
    echo("nut", d, METRIC_NUT_AC_WIDTHS[d], METRIC_NUT_THICKNESS[d]);
    echo("bolt", d, COURSE_METRIC_BOLT_MAJOR_THREAD_DIAMETERS[d], METRIC_BOLT_CAP_DIAMETERS[d]);
    translate([100 * d, 0, 0])
        boltHole(d, length = 30, tolerance = 0, $fn = 12);
}
