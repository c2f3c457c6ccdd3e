# METADATA
# title: Rows of wall types
# description: |
#   What the row of a build-up is called by, where a table of its own lists the walls of the schedule.
package lib.wall_type

# names of a wall type: the short words in the first columns of its row, as they are written.
names(line) := {name |
	some slot in ["type", "tag", "mark", "group"]
	name := trim_space(line.texts[slot])
	name != ""
	count(name) <= data.lib.wall_types.longest_name
}
