package beltwright.press.json;

import beltwright.ride.Calibration;
import beltwright.ride.Log;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;

/// What a measured ride says, for scripts and for the chart that lays it over the computed one.
public final class CalibrationJson {
    private static final JsonMapper MAPPER = JsonMapper.builder().build();

    private CalibrationJson() {}

    /// {@return the numbers that are missing, and nothing found}
    public static ObjectNode needs(String kit, String log, List<String> needs) {
        var json = head(kit, log);
        needs.forEach(json.putArray("needs")::add);
        for (var empty : List.of("estimates", "notes", "found")) {
            json.putArray(empty);
        }
        return json;
    }

    /// {@return what was found}
    ///
    /// @param of id of the part or kit that the coefficients belong to
    /// @param notes on how the log was read, before those of the result
    /// @param kept id of the measurement; empty where nothing was kept
    public static ObjectNode of(String kit, String of, Calibration.Result result, List<String> notes, String kept) {
        var json = head(kit, result.log().id());
        json.putArray("needs");
        result.estimates().forEach(json.putArray("estimates")::add);
        var all = json.putArray("notes");
        notes.forEach(all::add);
        result.notes().forEach(all::add);
        var found = json.putArray("found");
        for (var f : result.found()) {
            var one = found.addObject();
            one.put("what", f.what().toString())
                    .put("field", of + "." + f.what().path())
                    .put("unit", f.what().unit());
            DossierJson.number(one, "before", f.before());
            DossierJson.number(one, "value", f.value());
            DossierJson.number(one, "low", f.low());
            DossierJson.number(one, "high", f.high());
        }
        json.put("belts", result.log().belts().toString()).put("rows", result.rows());
        DossierJson.number(json, "leftOver", result.leftOver());
        json.put("kept", kept.isEmpty() ? null : kept);
        boolean heat = result.found().getFirst().what().heat();
        var what = heat ? Log.Reading.WINDING : Log.Reading.SPEED;
        json.put("reading", what.toString()).put("unit", what.unit());
        var time = json.putArray("timeS");
        result.log().of(Log.Reading.TIME).forEach(time::add);
        var measured = json.putArray("measured");
        result.log().of(what).forEach(measured::add);
        var computed = json.putArray("computed");
        result.computed().forEach(v -> computed.add(Math.rint(v * 1e4) / 1e4));
        return json;
    }

    private static ObjectNode head(String kit, String log) {
        var json = MAPPER.createObjectNode();
        json.put("schema", 1);
        return json.put("kit", kit).put("log", log);
    }
}
