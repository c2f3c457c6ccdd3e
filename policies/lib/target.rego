# METADATA
# title: Targets
# description: |
#   Whether a target of product data ("EPDM", "asphaltic sheets", "FM-1 and FM-2") means a material of a row. A
#   product named by its tag is the surest, then the family, then a telling trait. A vague trait (wood, metal) tells
#   only where the target has nothing else.
package lib.target

# means: the target means the item or contact end, in one way or another.
means(target, thing) if names(target, thing)

means(target, thing) if covers(target, thing)

# names: the target names the very product.
names(target, thing) if {
	thing.product != ""
	thing.product in target.products
}

names(target, thing) if {
	thing.tag != ""
	thing.tag in target.products
}

# covers: the target names its family or a telling trait, and the sort of material that the target's words ask for.
covers(target, thing) if {
	_shares(target, thing)
	not _other_sort(target, thing)
	not _is_under_film(target, thing)
}

# Most targets share no key with a thing, so that is asked first.
_shares(target, thing) if {
	some key in target.keys
	key in thing.keys
	_tells(target, thing, key)
}

_shares(target, thing) if {
	some open_kind in target.keys
	some key in data.lib.vague.stands_for[open_kind]
	key in thing.keys
}

_shares(target, thing) if {
	is_face(target)
	data.lib.vague.face_key in thing.keys
}

# is_face: the target names the film on the face of sheets, and no other trait of them.
is_face(target) if {
	data.lib.vague.face_key in target.keys
	every key in target.keys { key in data.lib.vague.faces }
	not regex.match(data.lib.vague.not_faces, lower(target.text))
}

_tells(_, thing, key) if key == thing.family

_tells(_, _, key) if not key in _vague

_tells(target, _, _) if {
	every key in target.keys { key in _vague }
}

_vague := {key | some key in data.lib.vague.keys}

_other_sort(target, thing) if {
	text := lower(target.text)
	some role in data.lib.vague.roles
	regex.match(role.words, text)
	not regex.match(role.unless, text)
	not thing.class in role.classes
}

# "Bare asphalt" is no sheet that has a film on its face.
_is_under_film(target, thing) if {
	regex.match(data.lib.vague.bare, lower(target.text))
	data.lib.vague.face_key in thing.keys
}
