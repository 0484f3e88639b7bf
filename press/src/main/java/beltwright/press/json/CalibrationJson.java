package beltwright.press.json;

import beltwright.ride.Calibration;
import beltwright.ride.Log;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;

/// What a measured ride says, for scripts and for the chart that lays it over the computed one.
public final class CalibrationJson {
    private static final JsonMapper MAPPER = JsonMapper.builder().build();

    private CalibrationJson() {}

    public static ObjectNode of(Calibration.Result result) {
        var json = MAPPER.createObjectNode();
        json.put("schema", 1);
        json.put("kit", result.log().kit());
        json.put("log", result.log().id());
        json.put("rows", result.rows());
        DossierJson.number(json, "leftOver", result.leftOver());
        var found = json.putArray("found");
        for (var f : result.found()) {
            var one = found.addObject();
            one.put("what", f.what().toString())
                    .put("field", f.what().path())
                    .put("unit", f.what().unit());
            DossierJson.number(one, "before", f.before());
            DossierJson.number(one, "value", f.value());
            DossierJson.number(one, "low", f.low());
            DossierJson.number(one, "high", f.high());
        }
        var notes = json.putArray("notes");
        result.notes().forEach(notes::add);
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
}
