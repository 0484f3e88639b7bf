# What the hole tool of a general-purpose modelling program cuts for each screw, in mm: clearance hole (medium), tap
# drill, counterbore and its depth for a cap head, countersink for a countersunk head.
import FreeCAD

document = FreeCAD.newDocument()
document.addObject("PartDesign::Body", "Body")
hole = document.addObject("PartDesign::Hole", "Hole")
hole.ThreadType = "ISOMetricProfile"
hole.ThreadFit = "Standard"
for size in hole.getEnumerationsOfProperty("ThreadSize"):
    hole.ThreadSize = size
    hole.Threaded = False
    hole.HoleCutType = "ISO 4762"
    clearance, counterbore, depth = hole.Diameter.Value, hole.HoleCutDiameter.Value, hole.HoleCutDepth.Value
    hole.HoleCutType = "ISO 10642"
    countersink = hole.HoleCutDiameter.Value
    hole.HoleCutType = "None"
    hole.Threaded = True
    print("hole", size, clearance, hole.Diameter.Value, counterbore, depth, countersink)
