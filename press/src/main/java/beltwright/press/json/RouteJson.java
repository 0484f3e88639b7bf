package beltwright.press.json;

import beltwright.ride.Route;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;

/// A route as it was recorded or drawn, for the chart that shows the whole road where a ride ends before it does.
public final class RouteJson {
    private static final JsonMapper MAPPER = JsonMapper.builder().build();

    private RouteJson() {}

    public static ObjectNode of(Route route) {
        var json = MAPPER.createObjectNode();
        json.put("schema", 1);
        json.put("route", route.id());
        DossierJson.number(json, "lengthM", route.lengthM());
        var distances = json.putArray("distanceM");
        var elevations = json.putArray("elevationM");
        for (var point : route.points()) {
            distances.add(point.distanceM());
            elevations.add(point.elevationM());
        }
        return json;
    }
}
