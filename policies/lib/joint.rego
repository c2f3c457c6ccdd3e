# METADATA
# title: Joints of sealants
# description: |
#   What several rules ask of the joint that a bead lies in.
package lib.joint

# is_still: words of the row tell of a joint that does not move, or of a bead that is no joint.
is_still(line) if {
	some text in line.texts
	regex.match(data.performance.joints.still, text)
}
