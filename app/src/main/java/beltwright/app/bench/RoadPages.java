package beltwright.app.bench;

import beltwright.press.chart.BrakeChart;
import beltwright.press.chart.PushChart;
import beltwright.press.chart.StopBars;
import beltwright.press.json.RideJson;
import beltwright.press.svg.SvgWriter;
import beltwright.press.table.PowerTables;
import beltwright.ride.LimitSheet;
import beltwright.ride.PowerSheet;
import io.javalin.http.Context;
import java.util.HashMap;
import java.util.Map;

/// What a kit does on the road at steady speed: power, brakes, limits to set.
public final class RoadPages {
    private final Bench bench;

    RoadPages(Bench bench) {
        this.bench = bench;
    }

    private record Asked(RoadSheet road, PowerSheet power) {
        Map<String, Object> arguments() {
            var arguments = new HashMap<String, Object>();
            arguments.put("road", road);
            arguments.put("power", power);
            return arguments;
        }

        boolean known() {
            return power.needs().isEmpty();
        }
    }

    private Asked asked(Context ctx, String here) {
        var road = RoadSheet.of(bench.shelf(), Bench.draft(ctx), here);
        return new Asked(road, PowerSheet.of(road.kit()));
    }

    void power(Context ctx) {
        var asked = asked(ctx, "/power");
        var arguments = asked.arguments();
        if (asked.known()) {
            arguments.put("chart", SvgWriter.inline(PushChart.of(asked.power()), "push"));
            arguments.put("stops", PowerTables.stops(asked.power()));
        }
        bench.render(ctx, "bench/power.jte", arguments);
    }

    void brakes(Context ctx) {
        var asked = asked(ctx, "/brakes");
        var arguments = asked.arguments();
        if (asked.known()) {
            arguments.put("chart", SvgWriter.inline(BrakeChart.of(asked.power()), "brakes"));
            arguments.put("bars", SvgWriter.inline(StopBars.of(asked.power()), "bars"));
            arguments.put("stops", PowerTables.stops(asked.power()));
            arguments.put("left", PowerTables.left(asked.power()));
            arguments.put("forces", PowerTables.forces(asked.power()));
        }
        bench.render(ctx, "bench/brakes.jte", arguments);
    }

    void limits(Context ctx) {
        var asked = asked(ctx, "/limits");
        var arguments = asked.arguments();
        if (asked.known()) {
            arguments.put("limits", PowerTables.limits(asked.power()));
            arguments.put("tests", LimitSheet.benchTests(asked.power().limits()));
        }
        bench.render(ctx, "bench/limits.jte", arguments);
    }

    void json(Context ctx) {
        Bench.json(ctx, RideJson.of(asked(ctx, "/power").power()));
    }
}
