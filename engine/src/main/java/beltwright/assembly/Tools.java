package beltwright.assembly;

import beltwright.kit.Joint;
import beltwright.kit.Kit;
import beltwright.part.DowelPin;
import beltwright.part.Nut;
import beltwright.part.Screw;
import beltwright.part.ScrewHead;
import beltwright.part.Thread;
import beltwright.quantity.Numbers;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/// The tools of a step, read off its fasteners: head and size by ISO give the key.
final class Tools {
    private Tools() {}

    static List<String> of(Kit kit, Joint joint) {
        Set<String> tools = new LinkedHashSet<>();
        for (var seat : joint.with()) {
            switch (kit.seat(seat).part()) {
                case Screw s -> tools.add(hexKey(s.head(), s.thread()));
                case Nut n -> tools.add(Numbers.plain(n.thread().hexagonMm()) + " mm spanner or socket");
                case DowelPin p -> tools.add("vice with soft jaws, or brass drift");
                default -> {}
            }
        }
        switch (joint.by()) {
            case PRESS_FIT -> tools.add("bearing press or vice with soft jaws, sleeve for the outer ring");
            case CLAMP -> tools.add("caliper");
            case SET_SCREWS -> tools.add("caliper");
            default -> {}
        }
        if (Torques.of(kit, joint).isPresent()) {
            tools.add("torque wrench");
        }
        return new ArrayList<>(tools);
    }

    static String hexKey(ScrewHead head, Thread thread) {
        return Numbers.plain(head.keyMm(thread)) + " mm hex key";
    }
}
