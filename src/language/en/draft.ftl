### Writing a spec.

draft-sections = Sections of the draft
draft-publish = Check and publish
draft-archive = Download the draft with its files (ZIP)
draft-sum = Sections ready: { $ready } · with errors: { $wrong } · empty: { $empty }.
draft-step-empty = empty
draft-step-ready = ready
draft-step-errors = { $count ->
    [one] 1 error
   *[other] { $count } errors
}
draft-step-warnings = { $count ->
    [one] 1 warning
   *[other] { $count } warnings
}
draft-step-changes = { $count ->
    [one] 1 change
   *[other] { $count } changes
}
draft-changes-count = { $count ->
    [0] No change since revision { $revision }
    [one] 1 change since revision { $revision }
   *[other] { $count } changes since revision { $revision }
}
draft-changes-title = What the draft changes
draft-changes-since = Against revision { $revision }, published { $date }.
draft-changes-older = There is a newer revision than this one.
draft-changes-open = Open the section
draft-changes-first = Nothing is published yet, so there is nothing to compare the draft with.
draft-save = Save
draft-findings = To mend in this section
draft-findings-none = Nothing is missing here.
draft-finding-open = Go there
draft-findings-typed = As it is typed now. It is not saved yet.
draft-here = { $name } has this section open, since { $since } UTC
draft-saved-by = Last saved by { $name }, { $at } UTC.
draft-newer = { $name } saved this section at { $at } UTC, after you opened it.
draft-newer-mine = You saved this section in another window at { $at } UTC, after you opened it here.
draft-newer-what = What you type here stays. When you save it, both versions are shown, and you choose wherever they differ.
draft-newer-show = Show what is saved now
draft-newer-history = What was changed
draft-undo = Take this save back
draft-lost = A save of yours is not in the draft yet: somebody else saved first.
draft-lost-open = { $section }, your save of { $at } UTC: see both versions

## Header

header-number = Style number
header-name = Name
header-garment = What it is
header-wearer = Made for
header-season = Season
header-origin = Country of origin
header-markets = Where it will be sold
header-unit = Unit
header-unit-help = All measurements are written in it. The other one is shown beside them.
header-base-size = Base size
header-base-size-help = The size that the first sample is made in.
header-base-size-none = There are no sizes yet. Enter them first:
header-measured = Measured
header-measured-help = Flat and relaxed, seam to seam.
header-after-washes = After washes
header-washes = Number of washes
header-main-fabric = Main fabric, in one line
header-contrast-fabric = Contrast fabric, in one line
header-exemptions-owner = Only an owner can complete or remove these: ask one.

## Rows

row-move = Move
row-up = Move up
row-down = Move down
row-remove = Remove
draft-save-add = Save, and give me more rows
draft-unread = { $count ->
    [one] Nothing is saved yet: one field cannot be read.
   *[other] Nothing is saved yet: { $count } fields cannot be read.
}

## Sizes

sizes-order = Smallest size first
size-code = Size, as on the label
size-label = Anything to add, such as age 5-6
size-base = base size

## Points of measure

point-letter = Letter
point-name = Name
point-basis = Counts
point-base = Base
point-minus = Tolerance minus
point-plus = Tolerance plus
point-minus-short = Tol −
point-plus-short = Tol +
point-grade = Grade
point-step = Round to
point-key = Key
point-critical = Critical
point-direction = Direction
point-start = Measure from
point-end = Measure to
point-path = Path
point-stretched = Stretched
point-note = Note
points-units = In { $unit }; below each value in { $other }, as a reference. In italics: what the rule gives, where rounding has changed it.
points-no-sizes = There are no sizes yet, so nothing can be graded.
points-how-grade = How to write a grade
points-grade-step = this step between all sizes
points-grade-segments = one step from XS to L, another from L to 2XL
points-grade-same = the same in all sizes
points-grade-values = a value for each size
points-grade-derived = follows point C, 1.5 less
grid-refused = Some cells stayed as they were: they take only one of their choices.
grid-offline = The values could not be worked out just now. They will be when you save.

## Parts and colourways

colourways-how = A part is anything that can have a colour of its own: main fabric, cuff, thread. An empty cell is not “none”: choose what it is. Colours on a screen are approximate.
part = Part
part-letter = Letter of the part
part-name = Name of the part
colourway = Colourway
colourway-code = Code of the colourway
colourway-name = Name of the colourway
hint-letter = P1
hint-code = Code
hint-name = Name
column-left = Move left
column-right = Move right
cell-kind = What it is
cell-colour = Colour
cell-name = Colour name
cell-reference = Reference and code
cell-screen = Screen colour, like #1f2a3c
cell-picker = Choose the screen colour

## Two versions of one section

conflict-title-heading = Somebody saved this section while you were writing.
conflict-nothing-lost = Nothing is lost. Choose what stands in each field that you both changed, or write it anew. What only one of you changed is chosen already.
conflict-moved = The section was saved again just now. Your choices are as you made them; look at the fields that are marked, and save once more.
conflict-same = What you sent is the same as what is in the draft.
conflict-both = You both changed
conflict-one = { $count ->
    [one] Only one of you changed: 1 field, chosen already
   *[other] Only one of you changed: { $count } fields, chosen already
}
conflict-whole = All of it
conflict-section = The section itself
conflict-again = saved again just now
conflict-write = Write it
conflict-unused = Something is written here, and another choice is ticked. Tick “Write it”, or empty the field.
conflict-all-mine = All as I have it
conflict-all-theirs = All as { $name } has it
conflict-mine = Yours, { $at } UTC
conflict-theirs = Saved by { $name }, { $at } UTC
conflict-gone = not there
conflict-empty = empty
conflict-order = Order
conflict-letter = Letter on a drawing: { $item }
conflict-line = Dimension line: { $item }
conflict-ring = Circle that { $drawing } shows larger
conflict-save = Save what is chosen

listed-all = All fields
listed-open = Open
one-save-next = Save, and on to { $name }
listed-back = Back to { $section }
error-whole-number = “{ $typed }” is no whole number.
sizes-lengths-help = Only when the garment comes in several lengths, for instance inseams 30, 32 and 34. Leave it empty otherwise.

history-title = History
history-link = History of this section
history-revisions = As it was published
history-take-revision = Take it from revision { $revision }
history-saves = Every save
history-now = now in the draft
history-restore = Take this one again

## Beside a form

beside-title = As it will be
beside-to-form = To the fields
beside-saved = As it was saved last.
beside-follows = Follows what you type. Nothing is saved yet.
beside-offline = It could not be drawn anew just now.
beside-not-in-table = not in the table of numbers
beside-callout-empty = Type a stitch number or choose a seam: what it is called stands here.
beside-colours = Its colours
beside-no-parts = It takes the colour of no part yet.
beside-per-garment = For one garment
beside-size = Size
beside-no-amounts = How much a garment needs is not said yet.
beside-sewn-by = Used in
beside-no-packs = No pack yet.
beside-pieces = { $count ->
    [one] 1 piece
   *[other] { $count } pieces
}
beside-volume = A carton takes up
beside-no-cartons = Cartons are counted once a colourway has planned pieces and one pack.
beside-cartons = Cartons for the planned pieces
beside-packs = Full packs
beside-left = Left over
beside-carton-count = Cartons

labels-symbols = Care symbols on a label need a licence.
labels-symbols-why = The symbols of ISO 3758 are registered marks. A label's artwork carries words, or symbols that you upload under a licence of your own. The small signs that Fellseam shows beside the words are drawn by us as an aid on the screen, and go on no label.
original-not-shown = The original is kept byte for byte for the factory to download. It cannot be shown here: upload a picture of it as its preview.
listed-file-kept = What is kept: download it

## Ready instructions

instructions-title = Ready instructions
instructions-help = Written as they stand here, with your figure and its unit, each factory reads them in its own language.
instructions-ready = Each factory reads this text in its own language
