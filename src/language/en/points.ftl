### The grid of points of measure.

point-how = How to measure
point-how-missing = to be written
point-rest = All other fields
point-closure = Opening
point-side = Side
point-basis-half = Half
point-basis-full = Full
point-basis-linear = Length
point-unrounded = from { $value }
point-steps-left = Steps left after rounding
point-tolerance-other = Tolerance in { $unit }, never wider: −{ $minus } +{ $plus }
point-wording = Take a wording
point-keep = Keep this wording as
points-letter = Letter in this order

## Keys and tools

grid-tools = Tools of the grid
grid-undo = Undo
grid-redo = Redo
grid-fill = Fill down
grid-handle = Move this row: drag it, or Alt and the arrow keys
grid-keys = Keys
grid-key-arrows = from cell to cell
grid-key-enter = one row down, with Shift up
grid-key-range = choose a block
grid-key-copy = a block to and from any spreadsheet
grid-key-fill = fill the block with its first row
grid-key-undo = take back, do again
grid-key-move = move the row
grid-key-open = open or close how it is measured
grid-key-save = save
grid-undone = Taken back.
grid-redone = Done again.
grid-lettered = The letters follow the rows. Rules that follow a point name its new letter.
grid-taken = The wording is taken.
grid-moved = { $letter } is row { $place } of { $count } now.

## Wordings

wordings-title = Wordings of how to measure
wordings-what = A point takes a copy: what changes here later changes no style. To keep a wording, write it at a point and give it a name there.
wordings-own = Your own
wordings-own-none = None yet.
wordings-shipped = Of the program: common practice, no source
wordings-forget = Take { $name } out
wordings-name = Name
error-wording-unknown = There is no wording “{ $name }”. Choose one of the list.
error-wording-empty = Write from where to where first, then keep it.

## Points copied from another style

carry-title = Copy points from another style
carry-from = Style
carry-show = Show its points
carry-no-style = There is no other style yet.
carry-which = Points of { $style }
carry-take = Copy
carry-look = See how they would stand here
carry-preview = From { $style }. Nothing is copied yet.
carry-empty = What you leave empty, the checks of the draft ask for again.
carry-told = To say, and what is left behind
carry-save = Copy them
carry-others = Choose others
carry-none = No point is chosen.
carry-moved = One of the two styles was saved just now. Look once more.
carry-had = It was: { $rule }
carry-base-of = Base of { $name }
carry-grade-of = Grade of { $name }
carry-ask-base = Its base value: the base size here is none of the sizes there.
carry-ask-grade = Its rule: the sizes are not the same.
carry-ask-source = Its rule: it followed a point that is not copied.
carry-left-part = Its part: none here has the same name.
carry-left-tolerances = Tolerances of sizes that are not here.
carry-left-lengths = What it adds for lengths that are not here.
carry-left-stretched = What it must reach when stretched: it was said for another base size.
carry-left-step = Its rounding step is in the other unit: it gets the usual one.
